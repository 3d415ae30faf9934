import {
  filesOf,
  type JournalStore,
  type PushReply,
  type PushRequest,
  readEntry,
  targetOf,
} from '@brinewright/journal';
import type { ContentFiles } from './content-files.ts';
import { everyEntry } from './every-entry.ts';

/** Of the entries that redactions in a push aim at: which files they name, as long as that can still be read (R1). */
export const filesAimedAt = async (
  store: JournalStore,
  company: string,
  { entries }: PushRequest,
): Promise<ReadonlyMap<string, readonly string[]>> => {
  const aims = entries.flatMap((one) => {
    const read = readEntry(one);
    const target = read.ok ? targetOf(read.sealed.entry) : undefined;
    return target === undefined || !read.ok ? [] : [{ redaction: read.sealed.entry.id, target }];
  });
  const found = await Promise.all(
    aims.map(async ({ redaction, target }) => {
      const held = await store.find(company, target);
      return [redaction, held === undefined ? [] : filesOf(held.entry)] as const;
    }),
  );
  return new Map(found.filter(([, files]) => files.length > 0));
};

/** With the content of an entry go its files, unless another entry names them too. */
export const removeRedacted = async (
  {
    store,
    files,
    company,
  }: { readonly store: JournalStore; readonly files: ContentFiles; readonly company: string },
  aimedAt: ReadonlyMap<string, readonly string[]>,
  { verdicts }: PushReply,
): Promise<void> => {
  const kept = verdicts.flatMap((one) => (one.state === 'kept' ? (aimedAt.get(one.id) ?? []) : []));
  if (kept.length === 0) return;
  const unnamed = new Set(kept);
  for await (const { entry } of everyEntry(store, company))
    for (const file of filesOf(entry)) unnamed.delete(file);
  for (const file of unnamed) await files.remove(company, file);
};
