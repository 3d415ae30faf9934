import type { Entry } from '../entry/entry.ts';
import { byFoldOrder } from '../entry/order.ts';

/** The set of entries, repetitions gone, in fold order (F1, J4), and the way from any id to the entry that stands. */
export type Standing = {
  readonly entries: readonly Entry[];
  readonly byId: ReadonlyMap<string, Entry>;
};

/**
 * An entry and those written again for it are one (S1). Of several the last by J4 that was written again stands, on
 * every device alike, since whoever holds the first one will hold that one too.
 */
export const oneOfEach = (all: readonly Entry[]): Standing => {
  const unique = [...new Map(all.map((entry) => [entry.id, entry])).values()].toSorted(byFoldOrder);
  const standing = new Map<string, Entry>();
  for (const entry of unique) {
    const origin = originOf(entry);
    const other = standing.get(origin);
    if (other === undefined || entry.again !== undefined) standing.set(origin, entry);
  }
  const stands = (entry: Entry): Entry => standing.get(originOf(entry)) ?? entry;
  return {
    entries: unique.filter((entry) => stands(entry) === entry),
    byId: new Map(unique.flatMap((entry) => [entry.id, originOf(entry)].map((id) => [id, stands(entry)]))),
  };
};

/** What an entry stands for: the entry it was written again for, else itself. */
export const originOf = ({ id, again }: Entry): string => again ?? id;
