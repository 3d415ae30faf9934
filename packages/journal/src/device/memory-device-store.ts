import type { Sealed } from '../entry/entry.ts';
import { byFoldOrder } from '../entry/order.ts';
import { originOf } from '../fold/one-of-each.ts';
import { numberOf } from '../store/judge.ts';
import type { DeviceState, DeviceStore, DeviceTransaction, Held, StreamState } from './device-store.ts';

/** What a device's storage is asked to do, and what may fail of it. */
export type DeviceCall = 'read' | 'write' | 'quota';

export type MemoryDeviceOptions = {
  /** Asked before each read and write, and for room before a transaction that wrote is kept; it may throw. */
  readonly before?: (call: DeviceCall) => void;
};

/** How a device begins: nothing held, a name of its own. */
export const newDevice = (company: string, device: string): DeviceState => ({
  company,
  device,
  formerly: [],
  epoch: undefined,
  lamport: 0,
  clock: undefined,
});

/** A device's storage in memory: for trials, and where a browser has no database. */
export class MemoryDeviceStore implements DeviceStore {
  readonly #tables: Tables;
  readonly #before: (call: DeviceCall) => void;
  #queue: Promise<unknown> = Promise.resolve();

  constructor(begin: DeviceState | Tables, { before = () => undefined }: MemoryDeviceOptions = {}) {
    this.#tables = begin instanceof Tables ? begin : new Tables(begin);
    this.#before = before;
  }

  transact<T>(work: (tx: DeviceTransaction) => Promise<T>): Promise<T> {
    const done = this.#queue.then(() => this.#run(work));
    this.#queue = done.catch(() => undefined);
    return done;
  }

  /** A copied profile: all of it, the device's name too. */
  clone(options: MemoryDeviceOptions = {}): MemoryDeviceStore {
    return new MemoryDeviceStore(this.#tables.clone(), options);
  }

  async #run<T>(work: (tx: DeviceTransaction) => Promise<T>): Promise<T> {
    const tx = new MemoryTransaction(this.#tables, this.#before);
    try {
      const result = await work(tx);
      tx.commit();
      return result;
    } catch (error) {
      tx.rollBack();
      throw error;
    }
  }
}

/** All that is kept. Entries are found by id, number, stream and origin. */
class Tables {
  state: DeviceState;
  readonly entries = new Map<string, Held>();
  readonly streams = new Map<string, StreamState>();
  readonly #byNumber = new Map<string, Set<string>>();
  readonly #byStream = new Map<string, Set<string>>();
  readonly #byOrigin = new Map<string, Set<string>>();

  constructor(state: DeviceState) {
    this.state = state;
  }

  clone(): Tables {
    const copy = new Tables(this.state);
    for (const held of this.entries.values()) copy.set(held.entry.id, held);
    for (const [id, stream] of this.streams) copy.streams.set(id, stream);
    return copy;
  }

  set(id: string, held: Held | undefined): void {
    const before = this.entries.get(id);
    if (before !== undefined) for (const [index, key] of this.#keysOf(before)) index.get(key)?.delete(id);
    if (held === undefined) this.entries.delete(id);
    else {
      this.entries.set(id, held);
      for (const [index, key] of this.#keysOf(held)) addTo(index, key, id);
    }
  }

  at(number: string): readonly Held[] {
    return this.#all(this.#byNumber.get(number));
  }

  ofStream(stream: string): readonly Held[] {
    return this.#all(this.#byStream.get(stream));
  }

  ofOrigin(origin: string): readonly Held[] {
    return this.#all(this.#byOrigin.get(origin));
  }

  #all(ids: Iterable<string> = []): readonly Held[] {
    return [...ids].flatMap((id) => this.entries.get(id) ?? []);
  }

  #keysOf({ entry }: Sealed): readonly (readonly [Map<string, Set<string>>, string])[] {
    return [
      [this.#byNumber, numberOf(entry)],
      [this.#byStream, entry.stream],
      [this.#byOrigin, originOf(entry)],
    ];
  }
}

const addTo = (index: Map<string, Set<string>>, key: string, id: string): void => {
  const ids = index.get(key);
  if (ids === undefined) index.set(key, new Set([id]));
  else ids.add(id);
};

/** Changes the tables at once and remembers how to change them back. */
class MemoryTransaction implements DeviceTransaction {
  readonly #tables: Tables;
  readonly #before: (call: DeviceCall) => void;
  readonly #undo: (() => void)[] = [];
  #isOver = false;

  constructor(tables: Tables, before: (call: DeviceCall) => void) {
    this.#tables = tables;
    this.#before = before;
  }

  async state(): Promise<DeviceState> {
    return this.#read().state;
  }

  async setState(state: DeviceState): Promise<void> {
    const tables = this.#write();
    const before = tables.state;
    this.#undo.push(() => {
      tables.state = before;
    });
    tables.state = state;
  }

  async stream(stream: string): Promise<StreamState | undefined> {
    return this.#read().streams.get(stream);
  }

  async streams(): Promise<readonly StreamState[]> {
    return [...this.#read().streams.values()];
  }

  async setStream(state: StreamState): Promise<void> {
    const { streams } = this.#write();
    const before = streams.get(state.stream);
    this.#undo.push(() => {
      if (before === undefined) streams.delete(state.stream);
      else streams.set(state.stream, before);
    });
    streams.set(state.stream, state);
  }

  async entry(id: string): Promise<Held | undefined> {
    return this.#read().entries.get(id);
  }

  async at(stream: string, device: string, seq: number): Promise<readonly Held[]> {
    return this.#read().at(numberOf({ stream, device, seq }));
  }

  async entriesOf(stream: string): Promise<readonly Held[]> {
    return this.#read().ofStream(stream);
  }

  async ofOrigin(origin: string): Promise<readonly Held[]> {
    return this.#read().ofOrigin(origin);
  }

  async unsent(epoch: string | undefined, most: number): Promise<readonly Held[]> {
    return this.#inOrder(
      ({ durable, refused, displaced }) =>
        (durable === undefined || durable !== epoch) && refused === undefined && displaced === undefined,
    ).slice(0, most);
  }

  async refused(): Promise<readonly Held[]> {
    return this.#inOrder(({ refused }) => refused !== undefined);
  }

  async put(entries: readonly Held[]): Promise<void> {
    for (const held of entries) this.#set(held.entry.id, held);
  }

  async dropEntries(stream: string): Promise<void> {
    for (const { entry } of this.#read().ofStream(stream)) this.#set(entry.id, undefined);
  }

  commit(): void {
    if (this.#undo.length > 0) this.#before('quota');
    this.#isOver = true;
  }

  rollBack(): void {
    for (const undo of this.#undo.toReversed()) undo();
    this.#isOver = true;
  }

  #set(id: string, held: Held | undefined): void {
    const tables = this.#write();
    const before = tables.entries.get(id);
    this.#undo.push(() => tables.set(id, before));
    tables.set(id, held);
  }

  #inOrder(isWanted: (held: Held) => boolean): readonly Held[] {
    return [...this.#read().entries.values()]
      .filter(isWanted)
      .toSorted((a, b) => byFoldOrder(a.entry, b.entry));
  }

  #read(): Tables {
    return this.#open('read');
  }

  #write(): Tables {
    return this.#open('write');
  }

  #open(call: DeviceCall): Tables {
    if (this.#isOver) throw new RangeError('the transaction is over');
    this.#before(call);
    return this.#tables;
  }
}
