import type { Entry, Json } from '../entry/entry.ts';
import { fieldsOf, type JsonObject } from './registers.ts';

/*
 * Small changes to a payload on its way into a visit document.
 */

export const withEntry = ({ id }: Entry, written: Json): JsonObject => ({
  ...Object.fromEntries(fieldsOf(written)),
  entry: id,
});

/** An answer or reading says which unit it belongs to, where the entry does. */
export const ofUnit = (entry: Entry, written: Json): JsonObject => {
  const { conditioner } = entry.about;
  return { ...withEntry(entry, written), ...(conditioner === undefined ? {} : { conditioner }) };
};

export const without = (written: Json, ...keys: readonly string[]): JsonObject =>
  Object.fromEntries(fieldsOf(written).filter(([key]) => !keys.includes(key)));

export const fieldOf = (written: Json, name: string): Json =>
  fieldsOf(written).find(([key]) => key === name)?.[1] ?? null;
