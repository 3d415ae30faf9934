import type { Entry } from '../entry/entry.ts';
import { isBefore } from '../entry/order.ts';

/** A value somebody wrote. */
export type Written<T> = { readonly entry: Entry; readonly value: T };

/**
 * Those writings of one value that no other has seen, after one more (F2). Writings come in fold order, so the new one
 * is never before an old one, and the last is in force.
 */
export const withWritten = <T>(heads: readonly Written<T>[], written: Written<T>): readonly Written<T>[] => [
  ...heads.filter(({ entry }) => !isBefore(entry, written.entry)),
  written,
];

/** Whether they differ, by what they would be as JSON in whatever order of keys. */
export const differ = <T>(heads: readonly Written<T>[], identity: (value: T) => string): boolean =>
  heads.length > 1 && new Set(heads.map(({ value }) => identity(value))).size > 1;
