import type { Equipment } from '@brinewright/equipment';
import type { FoldedVisit, Said } from '@brinewright/journal';
import { assess, type Visit } from '@brinewright/service';
import type { Made } from './made.ts';
import type { SiteOf } from './sites.ts';
import type { Speech } from './speech.ts';

/** A unit as it is known now: its last visit, with what was said of unit and site since. */
export const unitMade = (
  { stream, folded: site }: SiteOf,
  conditioner: string,
  equipment: Equipment,
  speech: Speech,
  now: string,
): Made | undefined => {
  const subject = site.conditioners.find(({ id }) => id === conditioner);
  if (site.site === undefined || subject === undefined) return undefined;
  const last = site.visits.findLast(({ visit }) => visit.subject === conditioner);
  const visit: Visit = {
    ...(last?.visit ?? { schema: 1, id: 'never-visited' }),
    site: site.site,
    water: [...site.water],
    ...(site.demand === undefined ? {} : { demand: site.demand }),
    ...(site.supply === undefined ? {} : { supply: site.supply }),
    conditioners: [...site.conditioners],
    subject: conditioner,
  };
  return {
    stream,
    site,
    folded: last ?? neverVisited(visit, now),
    visit,
    subject,
    assessment: assess(visit, equipment, { now, effort: 'quick' }),
    equipment,
    family: equipment.families.get(subject.family),
    speech,
    now,
  };
};

const neverVisited = (visit: Visit, now: string): FoldedVisit => {
  const said: Said = { entry: '', author: '', at: now, zone: '' };
  return { id: visit.id, visit, started: said, entries: 0, last: said, advice: [], gone: [] };
};
