import {
  type JournalStore,
  mostEntries,
  type Refusal,
  readEntry,
  type WireEntry,
} from '@brinewright/journal';
import { z } from 'zod';
import { everyEntry } from './every-entry.ts';
import type { Asker, Workshop } from './workshop.ts';

/** A record as one file: every entry with its hash, in the order of the log it was taken from. */
export const bundleSchema = z.object({
  schema: z.literal(1),
  company: z.uuid(),
  entries: z.array(z.strictObject({ entry: z.unknown(), hash: z.string().length(64).optional() })),
});

/** Written entry by entry, so that a long record is never held whole. */
export async function* bundleText(store: JournalStore, company: string): AsyncGenerator<string> {
  yield `{"schema":1,"company":${JSON.stringify(company)},"entries":[`;
  let between = '\n';
  for await (const { text, hash } of everyEntry(store, company)) {
    yield `${between}{"entry":${text},"hash":"${hash}"}`;
    between = ',\n';
  }
  yield '\n]}\n';
}

export type Refused = { readonly id: string; readonly reason: Refusal };

export type Imported = {
  readonly kept: number;
  /** The record had them already. */
  readonly known: number;
  readonly refused: readonly Refused[];
};

/** Entries of a bundle merged into the record by push, which takes what it lacks and refuses what is not right. */
export const importEntries = async (
  workshop: Workshop,
  asker: Asker,
  entries: readonly WireEntry[],
): Promise<Imported> => {
  const altered = entries.filter(isAltered);
  const whole = entries.filter((one) => !altered.includes(one));
  let kept = 0;
  let known = 0;
  const refused: Refused[] = altered.map(({ entry }) => ({ id: idOf(entry), reason: 'tampered' }));
  for (let from = 0; from < whole.length; from += mostEntries) {
    const { last } = await workshop.state();
    const batch = whole.slice(from, from + mostEntries).map(({ entry, hash }) => ({ entry, hash }));
    const { verdicts } = await workshop.push(asker, { entries: batch });
    for (const verdict of verdicts)
      if (verdict.state === 'refused') refused.push({ id: verdict.id ?? '', reason: verdict.reason });
      else if (verdict.position > last) kept += 1;
      else known += 1;
  }
  return { kept, known, refused };
};

/** The content is not what its hash says: changed since it was written out. */
const isAltered = (wire: WireEntry): boolean => {
  const read = readEntry(wire);
  return read.ok && wire.hash !== undefined && read.sealed.hash !== wire.hash;
};

const idOf = (entry: unknown): string => {
  const read = readEntry({ entry });
  return (read.ok ? read.sealed.entry.id : read.id) ?? '';
};
