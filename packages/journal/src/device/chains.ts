import type { Entry } from '../entry/entry.ts';
import type { Held } from './device-store.ts';

/** Entries of one name that one hand can have written one after another, in any number of streams. */
export type Chain = {
  readonly device: string;
  /** In fold order. */
  readonly entries: readonly Held[];
  /** Of each stream the lowest number: what lies below it is common with the server. */
  readonly firsts: ReadonlyMap<string, number>;
};

/** Splits entries in fold order by name, and by hand where several wrote under one name. */
export const chainsOf = (inOrder: readonly Held[]): readonly Chain[] => {
  const chains: Held[][] = [];
  for (const held of inOrder) {
    const chain = chains.find((one) => goesOn(one, held.entry));
    if (chain === undefined) chains.push([held]);
    else chain.push(held);
  }
  return chains.map((entries) => ({ device: deviceOf(entries), entries, firsts: firstsOf(entries) }));
};

const goesOn = (chain: readonly Held[], entry: Entry): boolean => {
  const [first] = chain;
  if (first?.entry.device !== entry.device) return false;
  const last = chain.findLast((one) => one.entry.stream === entry.stream)?.entry;
  return last === undefined || (last.seq < entry.seq && last.lamport < entry.lamport && sawAll(entry, last));
};

/** One hand never forgets what it has seen. */
const sawAll = ({ seen }: Entry, before: Entry): boolean =>
  Object.entries(before.seen).every(([device, seq]) => (seen[device] ?? 0) >= seq);

const deviceOf = ([first]: readonly Held[]): string => first?.entry.device ?? '';

const firstsOf = (entries: readonly Held[]): ReadonlyMap<string, number> => {
  const firsts = new Map<string, number>();
  for (const { entry } of entries)
    firsts.set(entry.stream, Math.min(firsts.get(entry.stream) ?? entry.seq, entry.seq));
  return firsts;
};
