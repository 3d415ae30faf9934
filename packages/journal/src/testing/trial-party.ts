import type { DeviceState, Held } from '../device/device-store.ts';
import { follow } from '../device/follow.ts';
import { type DeviceCall, MemoryDeviceStore, newDevice } from '../device/memory-device-store.ts';
import { type SyncResult, syncRound } from '../device/sync-round.ts';
import type { TripOptions } from '../device/trip.ts';
import { writeEntries } from '../device/write-entries.ts';
import type { Draft, Sealed } from '../entry/entry.ts';
import { originOf } from '../fold/one-of-each.ts';
import type { Logged } from '../store/journal-store.ts';
import { MemoryStore } from '../store/memory-store.ts';
import { loopback } from '../sync/loopback.ts';
import type { Transport } from '../sync/transport.ts';
import { nextUuid } from './some-entries.ts';

/* A workshop's server and devices that share one stream with it, in memory. */

export const partyTime = Date.UTC(2026, 10, 25, 9);
const hand = { author: 'Test Hand', zone: 'America/Chicago', app: 'test', newId: nextUuid };

export class Party {
  readonly company = nextUuid();
  readonly stream = nextUuid();
  store = new MemoryStore(nextUuid);

  static async begin(): Promise<Party> {
    const party = new Party();
    await party.store.begin(party.company);
    return party;
  }

  /** A new device that follows the stream. */
  async device(options: { readonly isOwner?: boolean } = {}): Promise<PartyDevice> {
    const device = new PartyDevice(this, newDevice(this.company, nextUuid()), options.isOwner ?? false);
    await device.store.transact((tx) => follow(tx, this.stream));
    return device;
  }

  async log(): Promise<readonly Logged[]> {
    return (await this.store.pull(this.company, { all: 0 }, 100_000)).entries;
  }

  /** What is on record, by what it stands for. */
  async origins(): Promise<readonly string[]> {
    return (await this.log()).map(({ entry }) => originOf(entry));
  }

  /** A backup with the first entries only takes the record's place, in a new epoch (S4). */
  async restore(first: number): Promise<void> {
    const entries = (await this.log()).slice(0, first);
    this.store = new MemoryStore(nextUuid);
    await this.store.begin(this.company);
    const received = new Date(partyTime).toISOString();
    await this.store.push({ company: this.company, pusher: 'backup', isOwner: true, received, entries });
  }
}

export class PartyDevice {
  readonly party: Party;
  readonly isOwner: boolean;
  readonly store: MemoryDeviceStore;
  /** Asked before each call to its storage. */
  before: (call: DeviceCall) => void = () => undefined;

  constructor(party: Party, begin: DeviceState | MemoryDeviceStore, isOwner: boolean) {
    this.party = party;
    this.isOwner = isOwner;
    const options = { before: (call: DeviceCall) => this.before(call) };
    this.store =
      begin instanceof MemoryDeviceStore ? begin.clone(options) : new MemoryDeviceStore(begin, options);
  }

  /** A copied profile: the name and all that is held. */
  copy(): PartyDevice {
    return new PartyDevice(this.party, this.store, this.isOwner);
  }

  /** The way to the server as it is at each call. */
  way(): Transport {
    const here = (): Transport =>
      loopback({
        store: this.party.store,
        session: { company: this.party.company, pusher: 'a phone', isOwner: this.isOwner },
        now: () => new Date(partyTime + 60_000).toISOString(),
      });
    return {
      push: (request) => here().push(request),
      pull: (request) => here().pull(request),
      offer: (request) => here().offer(request),
      sendFile: (hash, bytes) => here().sendFile(hash, bytes),
      fetchFile: (hash) => here().fetchFile(hash),
    };
  }

  get options(): TripOptions {
    return { now: () => partyTime, newId: nextUuid };
  }

  sync(way = this.way(), options: Partial<TripOptions> = {}): Promise<SyncResult> {
    return syncRound(this.store, way, { ...this.options, ...options });
  }

  writeDrafts(drafts: readonly Draft[]): Promise<readonly Sealed[]> {
    const wall = new Date(partyTime).toISOString();
    return this.store.transact((tx) => writeEntries(tx, drafts, { ...hand, wall }));
  }

  /** So many notes in the stream of the party. */
  write(count: number): Promise<readonly Sealed[]> {
    return this.writeDrafts(
      Array.from({ length: count }, (_, at) => noteIn(this.party.stream, `note ${at}`)),
    );
  }

  async writeOne(draft: Draft): Promise<Sealed> {
    const [written] = await this.writeDrafts([draft]);
    if (written === undefined) throw new RangeError('nothing was written');
    return written;
  }

  state(): Promise<DeviceState> {
    return this.store.transact((tx) => tx.state());
  }

  held(stream = this.party.stream): Promise<readonly Held[]> {
    return this.store.transact((tx) => tx.entriesOf(stream));
  }

  find(id: string): Promise<Held | undefined> {
    return this.store.transact((tx) => tx.entry(id));
  }
}

export const noteIn = (stream: string, text: string): Draft => ({
  stream,
  kind: 'visit-noted/1',
  payload: { text },
  about: { visit: 'first' },
});

export const correctionOf = ({ entry }: Sealed, text: string): Draft => ({
  stream: entry.stream,
  kind: 'corrected/1',
  payload: { target: entry.id, payload: { text } },
  about: {},
});

export const redactionOf = ({ entry }: Sealed): Draft => ({
  stream: entry.stream,
  kind: 'redacted/1',
  payload: { target: entry.id, reason: 'asked for' },
  about: {},
});
