import type { Path } from '@brinewright/words';

/** Maps and lists, as plain data has them. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

export const valueAt = (data: unknown, path: Path): unknown => {
  let value = data;
  for (const key of path) {
    if (!isRecord(value) || !Object.hasOwn(value, key)) return undefined;
    value = value[key];
  }
  return value;
};
