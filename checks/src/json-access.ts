import { isObject } from './read-data.ts';

/** A field of a JSON object; a missing one is a mistake in the data file, told with its place. */
export const field = (value: unknown, name: string): unknown => {
  if (!isObject(value) || !(name in value))
    throw new Error(`no ${name} in ${JSON.stringify(value).slice(0, 80)}`);
  return value[name];
};

export const numberIn = (value: unknown, name: string): number => {
  const found = field(value, name);
  if (typeof found !== 'number') throw new Error(`${name}: number expected`);
  return found;
};

export const textIn = (value: unknown, name: string): string => {
  const found = field(value, name);
  if (typeof found !== 'string') throw new Error(`${name}: text expected`);
  return found;
};

export const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);

export const listIn = (value: unknown, name: string): readonly unknown[] => {
  const found = field(value, name);
  if (!isList(found)) throw new Error(`${name}: list expected`);
  return found;
};

export const numbersIn = (value: unknown, name: string): readonly number[] =>
  listIn(value, name).map((item) => {
    if (typeof item !== 'number') throw new Error(`${name}: numbers expected`);
    return item;
  });

export const textsIn = (value: unknown, name: string): readonly string[] =>
  listIn(value, name).map((item) => {
    if (typeof item !== 'string') throw new Error(`${name}: texts expected`);
    return item;
  });
