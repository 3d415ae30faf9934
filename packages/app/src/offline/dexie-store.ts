import {
  byFoldOrder,
  type DeviceStore,
  type DeviceTransaction,
  type Held,
  originOf,
} from '@brinewright/journal';
import { Dexie } from 'dexie';
import type { AppDatabase, EntryRow } from './database.ts';

/** The journal of this device in the browser's database. */
export const dexieStore = (database: AppDatabase): DeviceStore => ({
  transact: (work) =>
    // An async function, or Dexie would not know the transaction again after an await.
    database.transaction('rw', [database.entries, database.streams, database.device], async () =>
      work(transactionOn(database)),
    ),
});

const transactionOn = (database: AppDatabase): DeviceTransaction => ({
  state: async () => {
    const state = await database.device.get('state');
    if (state === undefined) throw new RangeError('this device has no name yet');
    return state;
  },
  setState: async (state) => {
    await database.device.put(state, 'state');
  },
  stream: (stream) => database.streams.get(stream),
  streams: () => database.streams.toArray(),
  setStream: async (state) => {
    await database.streams.put(state);
  },
  entry: async (id) => (await database.entries.get(id))?.held,
  at: async (stream, device, seq) => heldIn(await database.entries.where({ stream, device, seq }).toArray()),
  entriesOf: async (stream) =>
    heldIn(await database.entries.where('stream').equals(stream).toArray()).toSorted(inFoldOrder),
  ofOrigin: async (origin) => heldIn(await database.entries.where('origin').equals(origin).toArray()),
  unsent: (epoch, most) => unsentOf(database, epoch, most),
  refused: async () =>
    heldIn(await database.entries.where('standing').equals('refused').toArray()).toSorted(inFoldOrder),
  put: async (entries) => {
    await database.entries.bulkPut(entries.map(rowOf));
  },
  dropEntries: async (stream) => {
    await database.entries.where('stream').equals(stream).delete();
  },
});

const inFoldOrder = (a: Held, b: Held): number => byFoldOrder(a.entry, b.entry);

const heldIn = (rows: readonly EntryRow[]): readonly Held[] => rows.map(({ held }) => held);

const rowOf = (held: Held): EntryRow => {
  const { id, stream, device, seq } = held.entry;
  return {
    id,
    stream,
    device,
    seq,
    origin: originOf(held.entry),
    standing: standingOf(held),
    durableIn: held.durable ?? '',
    held,
  };
};

const standingOf = ({ refused, displaced }: Held): EntryRow['standing'] => {
  if (refused !== undefined) return 'refused';
  return displaced === true ? 'displaced' : 'taken';
};

/** All whose epoch is another, so that a server restored from a backup is sent everything again (S4). */
const unsentOf = async (
  { entries }: AppDatabase,
  epoch: string | undefined,
  most: number,
): Promise<readonly Held[]> => {
  const standing = entries.where('[standing+durableIn]');
  const [from, to] = [
    ['taken', Dexie.minKey],
    ['taken', Dexie.maxKey],
  ];
  if (epoch === undefined) return inOrder(await standing.between(from, to).toArray(), most);
  const here = ['taken', epoch];
  const before = await standing.between(from, here).toArray();
  const after = await entries.where('[standing+durableIn]').between(here, to, false).toArray();
  return inOrder([...before, ...after], most);
};

const inOrder = (rows: readonly EntryRow[], most: number): readonly Held[] =>
  heldIn(rows).toSorted(inFoldOrder).slice(0, most);
