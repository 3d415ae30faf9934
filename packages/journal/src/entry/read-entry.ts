import { type Entry, entrySchema, type Sealed } from './entry.ts';
import type { Refusal } from './refusal.ts';
import { seal } from './seal.ts';

/** As it comes over the wire: the entry as written; a tombstone brings the hash of what it was. */
export type WireEntry = { readonly entry: unknown; readonly hash?: string | undefined };

export type ReadEntry =
  | { readonly ok: true; readonly sealed: Sealed }
  | { readonly ok: false; readonly id: string | undefined; readonly reason: Refusal };

/** The longest entry, in bytes of its canonical form; photos are files, not entries. */
export const longestEntry = 256 * 1024;

/** Checks the envelope of an entry, and nothing else: a payload nobody can read is kept too. */
export const readEntry = ({ entry: given, hash }: WireEntry): ReadEntry => {
  const refused = (reason: Refusal): ReadEntry => ({ ok: false, id: idOf(given), reason });
  if (!isPlainJson(given, 0)) return refused('not-json');
  const parsed = entrySchema.safeParse(given);
  if (!parsed.success) return refused('malformed');
  const sealed = seal(parsed.data);
  if (sealed.text.length > longestEntry) return refused('too-large');
  if (!isTombstone(parsed.data)) return { ok: true, sealed };
  return hash !== undefined && /^[0-9a-f]{64}$/u.test(hash)
    ? { ok: true, sealed: { ...sealed, hash, redacted: true } }
    : refused('malformed');
};

/** What is left of a redacted entry: id, order and hash, with a payload that says by which entry. */
export const tombstone = (entry: Entry, by: string): Entry => ({ ...entry, payload: { redacted: by } });

export const isTombstone = ({ payload }: Entry): boolean =>
  typeof payload === 'object' &&
  payload !== null &&
  Object.keys(payload).length === 1 &&
  Object.hasOwn(payload, 'redacted');

const idOf = (given: unknown): string | undefined => {
  if (typeof given !== 'object' || given === null || !('id' in given)) return undefined;
  return typeof given.id === 'string' ? given.id.slice(0, 100) : undefined;
};

const deepest = 64;

/** Text that has no canonical form (lone surrogates), numbers that are none, and nests without end are no JSON for us. */
const isPlainJson = (value: unknown, depth: number): boolean => {
  if (depth > deepest) return false;
  if (typeof value === 'string') return value.isWellFormed();
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return typeof value === 'boolean' || value === null;
  return Object.entries(value).every(([key, held]) => key.isWellFormed() && isPlainJson(held, depth + 1));
};
