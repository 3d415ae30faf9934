import type { DeviceState, DeviceStore, DeviceTransaction, Held, StreamState } from '@brinewright/journal';

/** All that a device keeps, by name, so that two can be compared whatever their order. */
export type Kept = {
  readonly state: DeviceState;
  readonly streams: ReadonlyMap<string, StreamState>;
  readonly entries: ReadonlyMap<string, Held>;
};

export type WatchedStore = {
  readonly store: DeviceStore;
  /** What was kept when the last transaction that went well was over. */
  readonly last: () => Kept;
};

/** A store of which is noted, after each transaction that went well, what it keeps; looked at past the failures. */
export const watchStore = async (inner: DeviceStore, look: () => Promise<Kept>): Promise<WatchedStore> => {
  let last = await look();
  const transact = async <T>(work: (tx: DeviceTransaction) => Promise<T>): Promise<T> => {
    const result = await inner.transact(work);
    last = await look();
    return result;
  };
  return { store: { transact }, last: () => last };
};

export const keptIn = (store: DeviceStore): Promise<Kept> =>
  store.transact(async (tx) => {
    const streams = await tx.streams();
    const held: Held[] = [];
    for (const { stream } of streams) held.push(...(await tx.entriesOf(stream)));
    return {
      state: await tx.state(),
      streams: new Map(streams.map((one) => [one.stream, one])),
      entries: new Map(held.map((one) => [one.entry.id, one])),
    };
  });
