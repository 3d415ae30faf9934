import { field, listIn, numberIn, textIn } from './json-access.ts';
import { isObject, readJson } from './read-data.ts';
import type { Claim, Tolerance } from './row.ts';

/** A worked example whose expected values may be tables, lists and words. */
export type NestedExample = Pick<Claim, 'title' | 'source' | 'mark' | 'tolerance'> & {
  readonly id: string;
  readonly inputs: unknown;
  readonly expected: unknown;
};

/** What the engine computes, in the shape of the expected values. */
export type Computed = number | string | readonly Computed[] | { readonly [name: string]: Computed };

const toleranceIn = (example: unknown): Tolerance => {
  const tolerance = field(example, 'tolerance');
  return isObject(tolerance) && 'rel' in tolerance
    ? { rel: numberIn(tolerance, 'rel') }
    : { abs: numberIn(tolerance, 'abs') };
};

export const readNested = (file: string): ReadonlyMap<string, NestedExample> =>
  new Map(
    listIn(readJson(file), 'examples').map((example) => [
      textIn(example, 'id'),
      {
        id: textIn(example, 'id'),
        title: textIn(example, 'title'),
        source: textIn(example, 'source'),
        mark: textIn(example, 'mark'),
        tolerance: toleranceIn(example),
        inputs: field(example, 'inputs'),
        expected: field(example, 'expected'),
      },
    ]),
  );

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);

type Walk = {
  readonly common: Pick<Claim, 'title' | 'source' | 'mark' | 'tolerance'>;
  /** Names in a table that are inputs of its rows, not results. */
  readonly given: readonly string[];
};

const keysOf = (value: Readonly<Record<string, unknown>>, given: readonly string[]): readonly string[] =>
  Object.keys(value).filter((key) => !given.includes(key));

const compare = (walk: Walk, path: string, computed: unknown, expected: unknown): readonly Claim[] => {
  if (isList(expected)) {
    if (!isList(computed) || computed.length !== expected.length)
      throw new Error(`${path}: a list of ${expected.length} expected`);
    return expected.flatMap((item, place) => compare(walk, `${path} ${place + 1}`, computed[place], item));
  }
  if (isObject(expected)) {
    const names = keysOf(expected, walk.given);
    const surplus = isObject(computed) ? keysOf(computed, names) : [];
    if (surplus.length > 0) throw new Error(`${path}: nothing to compare with ${surplus.join(', ')}`);
    return names.flatMap((name) => compare(walk, `${path} ${name}`, field(computed, name), expected[name]));
  }
  const plain = (value: unknown): value is number | string =>
    typeof value === 'number' || typeof value === 'string';
  if (!plain(computed) || !plain(expected)) throw new Error(`${path}: a number or a word expected`);
  return [{ ...walk.common, id: path, computed, expected }];
};

/** A claim for every expected number and word of an example: what is missing or surplus is a mistake. */
export const nestedClaims = (
  examples: ReadonlyMap<string, NestedExample>,
  id: string,
  compute: (example: NestedExample) => Computed,
  given: readonly string[] = [],
): readonly Claim[] => {
  const example = examples.get(id);
  if (example === undefined) throw new Error(`no example ${id}`);
  const { title, source, mark, tolerance } = example;
  return compare(
    { common: { title, source, mark, tolerance }, given },
    id,
    compute(example),
    example.expected,
  );
};
