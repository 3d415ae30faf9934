import {
  type BundleRead,
  bundleOf,
  type DeviceStore,
  type Draft,
  type Entry,
  follow,
  importBundle,
  loopback,
  MemoryDeviceStore,
  MemoryStore,
  newDevice,
  readBundle,
  type Sealed,
  syncRound,
  type Transport,
  unfollow,
  writeEntries,
} from '@brinewright/journal';
import { uuidFrom } from '../kills/uuid.ts';
import { randomFrom } from '../random.ts';

/* What a device goes through while its storage fails once: work, a fork, a restore, a bundle, letting go. */

const instant = Date.UTC(2026, 10, 25, 9);
const nowText = new Date(instant).toISOString();

/** One thing done on the device; done again where it failed. */
export type DeviceStep = (store: DeviceStore) => Promise<void>;

/** The server of the scenario, and all that was written by whomever. */
export class DeviceScenario {
  readonly newId: () => string;
  readonly company: string;
  readonly site: string;
  readonly van: string;
  readonly written: Entry[] = [];
  server: MemoryStore;
  readonly #bundle: Extract<BundleRead, { readonly state: 'read' }>;

  static async begin(seed: number): Promise<DeviceScenario> {
    const random = randomFrom(seed);
    const newId = (): string => uuidFrom(random);
    const [company, site] = [newId(), newId()];
    const lost = new MemoryDeviceStore(newDevice(company, newId()));
    const written = await write(lost, [note(site, 'from a lost phone'), note(site, 'and more')], newId);
    const bundle = readBundle(JSON.parse(JSON.stringify(await bundleOf(lost))));
    if (bundle.state !== 'read') throw new Error('the bundle of the scenario cannot be read');
    const scenario = new DeviceScenario(newId, { company, site }, bundle);
    scenario.written.push(...written.map(({ entry }) => entry));
    await scenario.server.begin(company);
    return scenario;
  }

  private constructor(
    newId: () => string,
    { company, site }: { readonly company: string; readonly site: string },
    bundle: Extract<BundleRead, { readonly state: 'read' }>,
  ) {
    this.newId = newId;
    this.company = company;
    this.site = site;
    this.van = newId();
    this.server = new MemoryStore(newId);
    this.#bundle = bundle;
  }

  /** In order. What the twin and the server do between them goes well. */
  steps(device: MemoryDeviceStore): readonly (readonly [name: string, step: DeviceStep])[] {
    return [
      ['write', (store) => this.write(store, [this.site, this.site, this.van])],
      ['sync', (store) => this.sync(store)],
      ['write again', (store) => this.write(store, [this.site, this.site])],
      [
        'sync after a twin',
        this.#once(
          (store) => this.sync(store),
          () => this.#twin(device),
        ),
      ],
      ['write a third time', (store) => this.write(store, [this.van])],
      [
        'sync after a restore',
        this.#once(
          (store) => this.sync(store),
          () => this.#restore(),
        ),
      ],
      ['import', async (store) => void (await importBundle(store, this.#bundle, this.newId))],
      ['sync what was imported', (store) => this.sync(store)],
      ['let go', (store) => this.#letGo(store)],
      ['follow', (store) => store.transact((tx) => follow(tx, this.van))],
      ['sync what is followed anew', (store) => this.sync(store)],
    ];
  }

  async write(store: DeviceStore, streams: readonly string[]): Promise<void> {
    const drafts = streams.map((stream, at) => note(stream, `note ${at}`));
    this.written.push(...(await write(store, drafts, this.newId)).map(({ entry }) => entry));
  }

  async sync(store: DeviceStore): Promise<void> {
    const { state } = await syncRound(store, this.way(), { ...this.#options, most: 2 });
    if (state !== 'done') throw new Error(`a round ended with ${state}`);
  }

  way(): Transport {
    const session = { company: this.company, pusher: 'phone', isOwner: false };
    return loopback({ store: this.server, session, now: () => nowText });
  }

  get #options() {
    return { now: () => instant, newId: this.newId };
  }

  /** What happens elsewhere before a step happens only once, however often the step is tried. */
  #once(step: DeviceStep, before: () => Promise<void>): DeviceStep {
    let isDone = false;
    return async (store) => {
      if (!isDone) await before();
      isDone = true;
      await step(store);
    };
  }

  /** A copied profile writes and meets the server first: what the device wrote last is forked. */
  async #twin(device: MemoryDeviceStore): Promise<void> {
    const unsent = await device
      .clone()
      .transact(async (tx) => tx.unsent((await tx.state()).epoch, Number.MAX_SAFE_INTEGER));
    const entries = unsent.map(({ entry }) => ({ ...entry, id: this.newId(), payload: { text: 'a twin' } }));
    this.written.push(...entries);
    const reply = await this.way().push({ entries: entries.map((entry) => ({ entry })) });
    if (reply.state !== 'answered' || reply.value.verdicts.some(({ state }) => state !== 'kept'))
      throw new Error('the twin could not write');
  }

  /** Only the first entry was in the backup. */
  async #restore(): Promise<void> {
    const { entries } = await this.server.pull(this.company, { all: 0 }, 1);
    this.server = new MemoryStore(this.newId);
    await this.server.begin(this.company);
    const from = { company: this.company, pusher: 'backup', isOwner: true, received: nowText };
    await this.server.push({ ...from, entries });
  }

  async #letGo(store: DeviceStore): Promise<void> {
    const { state } = await unfollow(store, this.way(), this.van, this.#options);
    if (state !== 'let-go') throw new Error(`letting go ended with ${state}`);
  }
}

const note = (stream: string, text: string): Draft => ({
  stream,
  kind: 'visit-noted/1',
  payload: { text },
  about: { visit: 'first' },
});

const write = (
  store: DeviceStore,
  drafts: readonly Draft[],
  newId: () => string,
): Promise<readonly Sealed[]> => {
  const hand = { author: 'trial', wall: nowText, zone: 'America/Chicago', app: 'trial', newId };
  return store.transact((tx) => writeEntries(tx, drafts, hand));
};
