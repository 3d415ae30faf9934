import type { Path } from '@brinewright/words';
import { z } from 'zod';

/** Keys that a schema knows at a path, for 'did you mean'. */
export const keysAllowed = (schema: z.core.$ZodType, path: Path): readonly string[] => {
  const [key, ...rest] = path;
  const branches = unwrapped(schema);
  const known =
    key === undefined
      ? branches.flatMap(ownKeys)
      : branches.flatMap((branch) => inner(branch, key)).flatMap((next) => keysAllowed(next, rest));
  return [...new Set(known)];
};

const ownKeys = (schema: z.core.$ZodType): readonly string[] =>
  schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];

const inner = (schema: z.core.$ZodType, key: string | number): readonly z.core.$ZodType[] => {
  if (schema instanceof z.ZodObject) {
    const value: unknown = Object.hasOwn(schema.shape, key) ? schema.shape[key] : undefined;
    return value instanceof z.ZodType ? [value] : [];
  }
  if (schema instanceof z.ZodRecord) return [schema.valueType];
  return schema instanceof z.ZodArray ? [schema.element] : [];
};

/** Without 'optional', what a codec reads, and every branch of a union. */
const unwrapped = (schema: z.core.$ZodType): readonly z.core.$ZodType[] => {
  if (schema instanceof z.ZodOptional) return unwrapped(schema.unwrap());
  if (schema instanceof z.ZodPipe) return unwrapped(schema.in);
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(unwrapped);
  return [schema];
};
