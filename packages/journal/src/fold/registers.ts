import canonicalize from 'canonicalize';
import type { About, Entry, Json } from '../entry/entry.ts';
import type { Rival } from './folded.ts';
import { differ, type Written, withWritten } from './heads.ts';
import { saidOf } from './said.ts';

/** Where a single value stands in what it is part of: ['tank', 'girth']. */
export type ValuePath = readonly string[];

type Register = {
  readonly about: About;
  readonly kind: string;
  readonly path: ValuePath;
  readonly heads: readonly Written<Json>[];
};

/**
 * Single values (F2): of each the last written by J4, with all that were written by people who did not know of one
 * another. Values are given one by one or as the leaves of an object; `groups` are the keys whose fields stand alone.
 */
export class Registers {
  readonly #of = new Map<string, Register>();
  readonly #identity: (value: Json) => string;

  constructor(identity: (value: Json) => string = (value) => canonicalize(value) ?? '') {
    this.#identity = identity;
  }

  write(entry: Entry, path: ValuePath, value: Json): void {
    const key = path.join('\u0000');
    const known = this.#of.get(key);
    this.#of.set(key, {
      about: entry.about,
      kind: entry.kind,
      path,
      heads: withWritten(known?.heads ?? [], { entry, value }),
    });
  }

  writeLeaves(entry: Entry, value: Json, groups: readonly string[] = []): void {
    for (const [path, leaf] of leavesOf(value, groups)) this.write(entry, path, leaf);
  }

  get isEmpty(): boolean {
    return this.#of.size === 0;
  }

  /** In the order in which they were first written. */
  values(): readonly { readonly path: ValuePath; readonly value: Json; readonly entry: Entry }[] {
    return [...this.#of.values()].flatMap(({ path, heads }) => {
      const last = heads.at(-1);
      return last === undefined ? [] : [{ path, value: last.value, entry: last.entry }];
    });
  }

  /** The object whose leaves were written. */
  object(): JsonObject {
    return objectOf(this.values().map(({ path, value }) => [path, value]));
  }

  rivals(): readonly Rival[] {
    return [...this.#of.values()]
      .filter(({ heads }) => differ(heads, this.#identity))
      .map(({ about, kind, path, heads }) => ({
        about,
        kind,
        what: path.filter((part) => part !== '').join('.'),
        values: heads.toReversed().map(({ entry, value }) => ({ ...saidOf(entry), value })),
      }));
  }
}

export type JsonObject = { [key: string]: Json };

/** The fields of a value that is an object; of any other none. */
export const fieldsOf = (value: Json): readonly (readonly [string, Json])[] =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.entries(value) : [];

export type Leaf = readonly [path: ValuePath, value: Json];

/** The single values an object is made of; fields of a group stand alone, all else is whole. */
export const leavesOf = (value: Json, groups: readonly string[]): readonly Leaf[] =>
  fieldsOf(value).flatMap(([key, held]): readonly Leaf[] =>
    groups.includes(key)
      ? fieldsOf(held).map(([inner, leaf]): Leaf => [[key, inner], leaf])
      : [[[key], held]],
  );

/** The object made of such values. */
export const objectOf = (leaves: readonly Leaf[]): JsonObject => {
  const whole = new Map<string, Json | Map<string, Json>>();
  for (const [[key = '', inner], value] of leaves) {
    const group = whole.get(key);
    if (inner === undefined) whole.set(key, value);
    else whole.set(key, new Map([...(group instanceof Map ? group : []), [inner, value]]));
  }
  return Object.fromEntries(
    [...whole].map(([key, held]) => [key, held instanceof Map ? Object.fromEntries(held) : held]),
  );
};
