import { type Entry, type JournalStore, type Logged, mostEntries } from '@brinewright/journal';

/** Entries of one stream, in the order of the log. */
export const entriesOf = async (
  store: JournalStore,
  company: string,
  stream: string,
): Promise<readonly Entry[]> => {
  const found: Entry[] = [];
  for await (const { entry } of everyEntry(store, company, stream)) found.push(entry);
  return found;
};

/** All entries of one stream, or the whole log from its start, page by page in the order of the log. */
export async function* everyEntry(
  store: JournalStore,
  company: string,
  stream?: string,
): AsyncGenerator<Logged> {
  let after = 0;
  for (;;) {
    const wanted = stream === undefined ? { all: after } : { streams: new Map([[stream, after]]) };
    const { entries, more } = await store.pull(company, wanted, mostEntries);
    yield* entries;
    const last = entries.at(-1);
    if (!more || last === undefined) return;
    after = last.position;
  }
}
