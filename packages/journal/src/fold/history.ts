import { byCodeUnit } from '../entry/order.ts';
import type { FoldedSite, FoldedVisit, HistoryLine } from './folded.ts';

/** What was done at one unit, newest visit first. */
export const historyOf = ({ visits }: FoldedSite, conditioner: string): readonly HistoryLine[] =>
  visits
    .filter(({ visit }) => visit.subject === conditioner)
    .map(lineOf)
    .toSorted((a, b) => byCodeUnit(b.date, a.date) || byCodeUnit(b.visit, a.visit));

const lineOf = ({ id, visit, started, handedOver }: FoldedVisit): HistoryLine => ({
  visit: id,
  date: visit.date ?? started.at.slice(0, 10),
  by: visit.by?.name ?? started.author,
  ...(visit.complaint === undefined ? {} : { complaint: visit.complaint }),
  used: visit.used ?? [],
  ...(visit.settings?.set === undefined ? {} : { set: visit.settings.set }),
  readings: visit.readings ?? [],
  proofs: visit.proofs ?? [],
  isHandedOver: handedOver !== undefined,
});
