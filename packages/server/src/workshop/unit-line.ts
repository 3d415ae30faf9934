import type { Conditioner } from '@brinewright/service';
import type { SiteOf } from './log-follower.ts';
import { visitLines } from './visit-line.ts';

/** A unit as a list shows it. */
export type UnitLine = {
  readonly stream: string;
  readonly site: string;
  readonly unit: Conditioner;
  readonly visits: number;
  readonly lastVisit?: string;
};

export const unitLines = (site: SiteOf): readonly UnitLine[] =>
  site.folded.conditioners.map((unit) => {
    const visits = visitLines(site).filter(({ folded }) => folded.visit.subject === unit.id);
    const [last] = visits;
    return {
      stream: site.stream,
      site: site.folded.site?.name ?? '',
      unit,
      visits: visits.length,
      ...(last === undefined ? {} : { lastVisit: last.day }),
    };
  });
