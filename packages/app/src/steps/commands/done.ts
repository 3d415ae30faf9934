import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../offline/draft-about.ts';

/** Counted by hand, by what the pieces are. */
export type Counts = Readonly<Record<string, number>>;

type Written = { readonly operation: string; readonly instance?: number };

/** A step done, at its time, with what was counted at it. */
export const operationDone = (
  place: Place,
  writes: Written,
  at: string,
  counted?: Counts,
): readonly Draft[] => [
  aboutVisit(place, 'operation-done', { ...writes, at, ...(counted === undefined ? {} : { counted }) }),
];

/** The fact of a caution was seen. */
export const cautionAcknowledged = (place: Place, caution: string, at: string): readonly Draft[] => [
  aboutVisit(place, 'caution-acknowledged', { caution, at }),
];
