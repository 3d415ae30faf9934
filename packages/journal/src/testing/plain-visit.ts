import { type Visit, writeVisit } from '@brinewright/service';
import { parse } from 'yaml';
import type { Draft, Json } from '../entry/entry.ts';
import type { Desk } from './desk.ts';

export const recorded = (desk: Desk, drafts: readonly Draft[]): void => {
  for (const { kind, payload, about } of drafts) desk.writeKind(kind, payload, { about });
};

/** As written, without what an entry cannot carry (its own id) and what says nothing (empty lists and parts). */
export const plain = (visit: Visit): Json => bare(parse(writeVisit(visit))) ?? null;

const bare = (value: Json): Json | undefined => {
  if (Array.isArray(value)) return value.length === 0 ? undefined : value.map((one) => bare(one) ?? {});
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value)
    .filter(([key, held]) => !(key === 'entry' && typeof held === 'string'))
    .flatMap(([key, held]) => {
      const kept = bare(held);
      return kept === undefined ? [] : [[key, kept] as const];
    });
  return fields.length === 0 ? undefined : Object.fromEntries(fields);
};
