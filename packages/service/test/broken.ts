import type { Path } from '@brinewright/words';

/** Plain data of a document with something broken in it, at a known path. */
export type Broken = { readonly data: unknown; readonly at: Path };

const isPlain = (value: unknown): value is object => typeof value === 'object' && value !== null;

const childrenOf = (value: object): readonly (readonly [string | number, unknown])[] =>
  Array.isArray(value) ? [...value.entries()] : Object.entries(value);

/** Every path below the root with what stands there. */
export const placesIn = (
  value: unknown,
  at: Path = [],
): readonly { readonly at: Path; readonly value: unknown }[] =>
  isPlain(value)
    ? childrenOf(value).flatMap(([key, inner]) => [
        { at: [...at, key], value: inner },
        ...placesIn(inner, [...at, key]),
      ])
    : [];

type Change = (key: string | number, value: unknown) => readonly (readonly [string | number, unknown])[];

/** The same data with the entry at the path changed, dropped or made several. */
const changed = (data: unknown, [key, ...rest]: Path, change: Change): unknown => {
  if (!isPlain(data) || key === undefined) return data;
  const entries = childrenOf(data).flatMap(([name, value]) => {
    if (name !== key) return [[name, value] as const];
    return rest.length === 0 ? change(name, value) : [[name, changed(value, rest, change)] as const];
  });
  return Array.isArray(data) ? entries.map(([, value]) => value) : Object.fromEntries(entries);
};

export const without = (data: unknown, at: Path): unknown => changed(data, at, () => []);

const replaced =
  (value: unknown): Change =>
  (key) => [[key, value]];

const isQuantityText = (value: unknown): value is string =>
  typeof value === 'string' && /^\d+(?:\.\d+)? [a-zA-Z]/u.test(value);

const enumKeys = ['of', 'kind', 'how', 'seen', 'bedNow', 'schema'];
const idKeys = ['family', 'medium', 'controller', 'injector', 'drain', 'refill', 'tell', 'test', 'subject'];

/** What people and programs do to a document, each where it can be done and with what it makes of it. */
export type Mutation = {
  readonly name: string;
  readonly fits: (at: Path, value: unknown) => boolean;
  readonly change: Change;
};

const keyOf = (at: Path): string => String(at.at(-1));
const isKeyed = (at: Path): boolean => typeof at.at(-1) === 'string';

export const misspelledKey = 'a misspelled key';

export const mutations: readonly Mutation[] = [
  { name: 'a dropped key', fits: isKeyed, change: () => [] },
  {
    name: misspelledKey,
    fits: (at) => isKeyed(at) && keyOf(at).length > 2,
    change: (key, value) => [[String(key).replace(/(.)$/u, '$1$1'), value]],
  },
  {
    name: 'a number where a text belongs',
    fits: (_, value) => typeof value === 'string',
    change: replaced(42),
  },
  {
    name: 'a text where a list or map belongs',
    fits: (_, value) => isPlain(value),
    change: replaced('all of it'),
  },
  {
    name: 'a list where a plain value belongs',
    fits: (_, value) => !isPlain(value),
    change: (key, value) => [[key, [value]]],
  },
  {
    name: 'a unit of another kind',
    fits: (_, value) => isQuantityText(value),
    change: (key, value) => [[key, String(value).replace(/ .*$/u, ' furlong')]],
  },
  {
    name: 'a decimal comma',
    fits: (_, value) => isQuantityText(value),
    change: (key, value) => [[key, String(value).replace(/^(\d+)(?:\.\d+)?/u, '$1,5')]],
  },
  { name: 'nothing behind the colon', fits: () => true, change: replaced(null) },
  {
    name: 'an absurd number',
    fits: (_, value) => isQuantityText(value),
    change: (key, value) => [[key, String(value).replace(/^\d+(?:\.\d+)?/u, '1e300')]],
  },
  {
    name: 'a number below zero',
    fits: (_, value) => isQuantityText(value),
    change: (key, value) => [[key, `-${String(value)}`]],
  },
  {
    name: 'a word that is not one of those',
    fits: (at) => enumKeys.includes(keyOf(at)),
    change: replaced('sofener'),
  },
  { name: 'an id nobody knows', fits: (at) => idKeys.includes(keyOf(at)), change: replaced('no-such-thing') },
  { name: 'an emoji', fits: (_, value) => typeof value === 'string', change: replaced('💧🔧') },
  {
    name: 'a huge text',
    fits: (_, value) => typeof value === 'string',
    change: replaced('salt '.repeat(20_000)),
  },
];

export const mutated = (data: unknown, at: Path, { change }: Mutation): unknown => changed(data, at, change);
