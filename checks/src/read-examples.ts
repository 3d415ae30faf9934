import { field, isList, listIn, numberIn, textIn } from './json-access.ts';
import { isObject, readJson } from './read-data.ts';
import type { Claim, Tolerance } from './row.ts';

type Common = Pick<Claim, 'title' | 'source' | 'mark' | 'tolerance'>;

/** A worked example: expected numbers, words, lists and tables by name, one tolerance for all of them. */
export type Example = Common & {
  readonly id: string;
  readonly inputs: unknown;
  readonly input: (name: string) => number;
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

/** 'as U4' names another example's source: followed, so that one source is not counted twice. */
const sourceOf = (example: unknown, all: readonly unknown[]): string => {
  const source = textIn(example, 'source');
  const named = /\bas ([A-Z]\d+)$/.exec(source)?.[1];
  const other = all.find((one) => textIn(one, 'id') === named);
  return other === undefined ? source : textIn(other, 'source');
};

/** The worked examples of a JSON file, by id. */
export const readExamples = (file: string): ReadonlyMap<string, Example> => {
  const all = listIn(readJson(file), 'examples');
  return new Map(
    all.map((example) => {
      const inputs = field(example, 'inputs');
      return [
        textIn(example, 'id'),
        {
          id: textIn(example, 'id'),
          title: textIn(example, 'title'),
          source: sourceOf(example, all),
          mark: textIn(example, 'mark'),
          tolerance: toleranceIn(example),
          inputs,
          input: (name: string) => numberIn(inputs, name),
          expected: field(example, 'expected'),
        },
      ];
    }),
  );
};

type Walk = {
  readonly common: Common;
  /** Names in a table that are inputs of its rows, not results. */
  readonly given: readonly string[];
};

const keysOf = (value: Readonly<Record<string, unknown>>, given: readonly string[]): readonly string[] =>
  Object.keys(value).filter((key) => !given.includes(key));

const isPlain = (value: unknown): value is number | string =>
  typeof value === 'number' || typeof value === 'string';

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
  if (!isPlain(computed) || !isPlain(expected)) throw new Error(`${path}: a number or a word expected`);
  return [{ ...walk.common, id: path, computed, expected }];
};

/** A claim for every expected number and word of an example: what is missing or surplus is a mistake. */
export const claimsOf = (
  examples: ReadonlyMap<string, Example>,
  id: string,
  compute: (example: Example) => Computed,
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
