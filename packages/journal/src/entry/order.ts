import type { Entry } from './entry.ts';

/** Fold order (J4): lamport, then device as text by code unit. Total, and no clock enters it. */
export const byFoldOrder = (a: Entry, b: Entry): number =>
  a.lamport - b.lamport || byCodeUnit(a.device, b.device) || a.seq - b.seq || byCodeUnit(a.id, b.id);

export const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Whether the writer of `b` knew of `a` (J3). Where neither is before the other, they are rivals. Who knew an entry
 * wrote behind it, so the order is asked too: where a number was given twice, `seen` may mean the other one.
 */
export const isBefore = (a: Entry, b: Entry): boolean =>
  a.stream === b.stream &&
  a.lamport < b.lamport &&
  (a.device === b.device ? a.seq < b.seq : (b.seen[a.device] ?? 0) >= a.seq);
