import type { FoldedVisit } from '@brinewright/journal';
import type { Conditioner } from '@brinewright/service';
import type { SiteOf } from './log-follower.ts';

/** A visit as a list shows it. */
export type VisitLine = {
  readonly stream: string;
  readonly site: string;
  readonly folded: FoldedVisit;
  /** The day of the visit, else the day on which it was started. */
  readonly day: string;
  readonly unit: Conditioner | undefined;
};

/** The visits of a site, newest first. */
export const visitLines = ({ stream, folded }: SiteOf): readonly VisitLine[] =>
  folded.visits
    .map((one) => ({
      stream,
      site: folded.site?.name ?? one.visit.site.name,
      folded: one,
      day: dayOf(one),
      unit: one.visit.conditioners.find(({ id }) => id === one.visit.subject),
    }))
    .toReversed()
    .toSorted(newestFirst);

export const dayOf = ({ visit, started }: FoldedVisit): string => visit.date ?? started.at.slice(0, 10);

export const newestFirst = (a: { readonly day: string }, b: { readonly day: string }): number =>
  a.day === b.day ? 0 : a.day < b.day ? 1 : -1;
