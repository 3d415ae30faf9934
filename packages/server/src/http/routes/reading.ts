import type { FoldedSite, FoldedVisit, Remarks } from '@brinewright/journal';
import type { Workshop } from '../../workshop/workshop.ts';
import { ProblemError } from '../problem/problems.ts';

/** The site of a stream, or the problem that there is none. */
export const siteIn = async (workshop: Workshop, stream: string): Promise<FoldedSite> => {
  const site = await workshop.site(stream);
  if (site === undefined) throw new ProblemError('no-such-site', { values: { stream } });
  return site;
};

export const visitIn = async (
  workshop: Workshop,
  stream: string,
  visit: string,
): Promise<{ readonly site: FoldedSite; readonly folded: FoldedVisit }> => {
  const site = await siteIn(workshop, stream);
  const folded = site.visits.find(({ id }) => id === visit);
  if (folded === undefined) throw new ProblemError('no-such-visit', { values: { visit } });
  return { site, folded };
};

export const countRemarks = ({ rivals, setAside, waiting, newer }: Remarks) => ({
  rivals: rivals.length,
  setAside: setAside.length,
  waiting: waiting.length,
  newer: newer.length,
});
