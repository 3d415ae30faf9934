import type { Source } from '../engine/source.ts';
import type { AppDatabase } from './database.ts';

/** What the engine reads, from the browser's database. */
export const deviceSource = (database: AppDatabase, company: string): Source => ({
  company,
  streams: async () =>
    (await database.streams.filter(({ follows }) => follows).toArray()).map(({ stream }) => stream),
  entriesOf: async (stream) => {
    const rows = await database.entries.where('stream').equals(stream).toArray();
    return rows.flatMap(({ held }) => (held.displaced === true ? [] : [held.entry]));
  },
  definitions: () => database.definitions.toArray(),
});
