import {
  type Draft,
  type Entry,
  follow,
  followAll,
  type Held,
  type Logged,
  loopback,
  originOf,
  type Sealed,
  type SyncResult,
  syncRound,
  type Transport,
  type TripOptions,
  vectorOf,
  writeEntries,
} from '@brinewright/journal';
import { uuidFrom } from '../kills/uuid.ts';
import { type Random, randomFrom } from '../random.ts';
import { Crash, SimDevice, type SimDeviceOptions } from './sim-device.ts';
import type { Places } from './some-drafts.ts';
import type { Reached } from './states.ts';
import type { NewTrialServer, TrialServer } from './trial-server.ts';
import { Watch } from './watch.ts';
import { type Trouble, Way } from './way.ts';

/** As first written; who wrote it is undefined for the server's own device. */
export type Written = { readonly entry: Entry; readonly author: SimDevice | undefined };

const people: readonly SimDeviceOptions[] = [
  { label: 'office', isOwner: true, isOffice: true },
  { label: 'ana', isOwner: true, isOffice: false },
  { label: 'ben', isOwner: false, isOffice: false },
  { label: 'cy', isOwner: false, isOffice: false },
  { label: 'desk', isOwner: false, isOffice: true },
];

/** One server and its devices, and what is known of them by one who sees everything. */
export class TrialWorld {
  readonly places: Places;
  readonly server: TrialServer;
  readonly reached: Reached;
  readonly devices: SimDevice[] = [];
  readonly late: (() => Promise<unknown>)[] = [];
  readonly written = new Map<string, Written>();
  /** Origins that lay nowhere any more after a disaster: no rule can bring them back. */
  readonly gone = new Set<string>();
  readonly faults: string[] = [];
  readonly newId: () => string;
  restores = 0;
  #minutes = 0;

  static async begin(seed: number, newServer: NewTrialServer, reached: Reached): Promise<TrialWorld> {
    const random = randomFrom(seed ^ 0x5eed);
    const newId = (): string => uuidFrom(random);
    const places: Places = { company: newId(), sites: [newId(), newId()], van: newId() };
    const server = await newServer({ company: places.company, draw: newId });
    const world = new TrialWorld(places, server, reached, newId);
    for (const one of people) {
      const device = SimDevice.fresh(one, places.company, newId());
      world.devices.push(device);
      const streams = world.streams.filter(() => random.between(1, 2) === 1);
      await device.store.transact(async (tx) => {
        if (one.isOffice) await followAll(tx);
        else for (const stream of streams) await follow(tx, stream);
      });
    }
    return world;
  }

  private constructor(places: Places, server: TrialServer, reached: Reached, newId: () => string) {
    this.places = places;
    this.server = server;
    this.reached = reached;
    this.newId = newId;
  }

  get streams(): readonly [string, ...string[]] {
    return [...this.places.sites, this.places.van, this.places.company];
  }

  tick(): void {
    this.#minutes += 7;
  }

  serverNow(): string {
    return new Date(this.#instant()).toISOString();
  }

  optionsOf(device: SimDevice, most: number): TripOptions {
    return { now: () => this.#instant() + device.clockError, newId: this.newId, most };
  }

  wayOf({ label, isOwner }: SimDevice): Transport {
    const session = { company: this.places.company, pusher: label, isOwner };
    return loopback({ store: this.server.store, session, now: () => this.serverNow() });
  }

  /** One round over a way with trouble; undefined where the device died on it. */
  async sync(
    device: SimDevice,
    random: Random,
    trouble: Trouble = { kind: 'none' },
    isRough = false,
  ): Promise<SyncResult | undefined> {
    const { reached, late } = this;
    const inner = this.wayOf(device);
    const way = new Way({ inner, device, trouble, isRough, random, reached, late, watch: this.#watch() });
    const gaps = await gapsOf(device);
    try {
      return await syncRound(device.store, way, this.optionsOf(device, random.between(2, 12)));
    } catch (error) {
      if (!(error instanceof Crash)) throw error;
      return undefined;
    } finally {
      device.live();
      if ((await gapsOf(device)) < gaps) reached.mark('gap in a vector healed');
    }
  }

  async write(device: SimDevice, drafts: readonly Draft[]): Promise<readonly Sealed[]> {
    const before = await device.all();
    const hand = {
      author: device.label,
      wall: new Date(this.#instant() + device.clockError).toISOString(),
      zone: 'America/Chicago',
      app: 'trial',
      newId: this.newId,
    };
    const sealed = await device.store.transact((tx) => writeEntries(tx, drafts, hand));
    for (const { entry } of sealed) {
      this.written.set(entry.id, { entry, author: device });
      this.#checkCause(entry, before);
    }
    return sealed;
  }

  async log(): Promise<readonly Logged[]> {
    const { entries } = await this.server.store.pull(this.places.company, { all: 0 }, 100_000);
    return entries;
  }

  /** Every origin that lies on some device or on the server. */
  async alive(): Promise<ReadonlySet<string>> {
    const all: Entry[] = (await this.log()).map(({ entry }) => entry);
    for (const device of this.devices) all.push(...(await device.all()).map(({ entry }) => entry));
    return new Set(all.map(originOf));
  }

  /** Does what may lose entries. Only a disaster may; whatever else does has broken the rules. */
  async losing(what: string, isDisaster: boolean, work: () => Promise<void>): Promise<void> {
    const before = await this.alive();
    await work();
    const after = await this.alive();
    for (const origin of before) {
      if (after.has(origin)) continue;
      if (isDisaster) this.gone.add(origin);
      else this.faults.push(`${what} lost ${origin}`);
    }
  }

  #watch(): Watch {
    return new Watch(this.reached, {
      isAlive: (device) => this.devices.includes(device),
      restores: () => this.restores,
      authorOf: (origin) => this.written.get(origin)?.author,
    });
  }

  /** What was held is in the order before it (J4), and what was held without a gap was seen (J3). */
  #checkCause(entry: Entry, before: readonly Held[]): void {
    const highest = Math.max(0, ...before.map((one) => one.entry.lamport));
    if (entry.lamport <= highest) this.faults.push(`${entry.id} is not behind what its author held`);
    const inStream = before.map((one) => one.entry).filter(({ stream }) => stream === entry.stream);
    for (const [device, seq] of vectorOf(inStream))
      if (device !== entry.device && (entry.seen[device] ?? 0) !== seq)
        this.faults.push(`${entry.id} says it saw ${entry.seen[device] ?? 0} of ${device}, not ${seq}`);
  }

  #instant(): number {
    return Date.UTC(2026, 10, 25, 9) + this.#minutes * 60_000;
  }
}

const gapsOf = (device: SimDevice): Promise<number> =>
  device.store.transact(async (tx) =>
    (await tx.streams())
      .flatMap(({ beyond }) => Object.values(beyond))
      .reduce((sum, numbers) => sum + numbers.length, 0),
  );
