import type { Entry, Json } from './entry.ts';

/** The files an entry names, by their SHA-256 (A1): whatever stands under the key `file` and is such a name. */
export const filesOf = ({ payload }: Entry): readonly string[] => [...new Set(named(payload))];

const named = (value: Json): readonly string[] => {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value)) return value.flatMap(named);
  return Object.entries(value).flatMap(([key, held]) =>
    key === 'file' && typeof held === 'string' && /^[0-9a-f]{64}$/u.test(held) ? [held] : named(held),
  );
};
