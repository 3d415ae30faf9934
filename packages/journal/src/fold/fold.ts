import { type Visit, visitParts, visitSchema } from '@brinewright/service';
import type { Entry } from '../entry/entry.ts';
import { type Effective, effectiveFacts } from './effective.ts';
import type { FoldedSite, FoldedVisit, Remarks, Waiting } from './folded.ts';
import type { JsonObject } from './registers.ts';
import { saidOf } from './said.ts';
import { siteHandlers } from './site-handlers.ts';
import { SiteState } from './site-state.ts';
import { visitHandlers } from './visit-handlers.ts';
import { VisitState } from './visit-state.ts';

/**
 * A site with its units and all visits to them, out of the set of its stream's entries (F1).
 *
 * Pure and total: the same set gives the same site in whatever order, repetition or batches it comes; nothing a device
 * may send makes it throw; no definitions are read. Cost: sorting, then two passes.
 */
export const fold = (entries: readonly Entry[]): FoldedSite => {
  const { facts, withdrawn, rivals, setAside, waiting, newer } = effectiveFacts(entries);
  const site = new SiteState();
  const visits = visitsStarted(facts);
  const takenBack = new Set(withdrawn.flatMap((entry) => (isStart(entry) ? [entry.about.visit] : [])));
  for (const { entry, fact } of facts) {
    fact.tell(siteHandlers, { site, entry });
    const visit = entry.about.visit === undefined ? undefined : visits.get(entry.about.visit);
    if (visit === undefined) {
      if (entry.about.visit !== undefined && !takenBack.has(entry.about.visit))
        waiting.push(waitsFor(entry, entry.about.visit));
      continue;
    }
    visit.count(entry);
    fact.tell(visitHandlers, { visit, site, entry });
  }
  const read = [...visits].map(([id, state]) => readVisit(id, state, site));
  return {
    ...readSite(site),
    visits: read.flatMap((one) => ('visit' in one ? [one.visit] : [])),
    rivals: [...rivals, ...site.rivals(), ...[...visits.values()].flatMap((one) => one.rivals())],
    setAside,
    waiting: [
      ...waiting,
      ...site.neverAdded().map((entry) => waitsFor(entry, entry.about.conditioner ?? '')),
      ...read.flatMap((one) => ('waits' in one ? [one.waits] : [])),
    ],
    newer,
  };
};

/** One visit of a folded site; the same type as a written one. */
export const visitOf = ({ visits }: FoldedSite, id: string): Visit | undefined =>
  visits.find((one) => one.id === id)?.visit;

const isStart = ({ kind }: Entry): boolean => kind.startsWith('visit-started/');

/** Visits in the order in which they were started. */
const visitsStarted = (facts: readonly Effective[]): ReadonlyMap<string, VisitState> => {
  const visits = new Map<string, VisitState>();
  for (const { entry, fact } of facts) {
    const id = entry.about.visit;
    if (fact.name === 'visit-started' && id !== undefined && !visits.has(id))
      visits.set(id, new VisitState(entry));
  }
  return visits;
};

const waitsFor = (entry: Entry, what: string): Waiting => ({
  ...saidOf(entry),
  kind: entry.kind,
  about: entry.about,
  for: what,
});

/** Without its site or its unit there is no visit yet; it waits for them. */
const readVisit = (
  id: string,
  state: VisitState,
  site: SiteState,
): { readonly visit: FoldedVisit } | { readonly waits: Waiting } => {
  const written: JsonObject = { ...(state.siteThen ?? site.written()), ...state.written(id) };
  const read = visitSchema.safeParse(written);
  if (!read.success || !hasSubject(read.data)) return { waits: waitsFor(state.first, id) };
  const { started, last, entries, handedOver, advice, definitionsFile, gone } = state;
  return {
    visit: {
      id,
      visit: read.data,
      started,
      last,
      entries,
      advice,
      gone,
      ...(handedOver === undefined ? {} : { handedOver }),
      ...(definitionsFile === undefined ? {} : { definitionsFile }),
    },
  };
};

const hasSubject = ({ conditioners, subject }: Visit): boolean =>
  conditioners.some(({ id }) => id === subject);

/** The parts of a visit that hold for the site; each by itself, so that one missing does not hide the others. */
const readSite = (state: SiteState): Omit<FoldedSite, 'visits' | keyof Remarks> => {
  const { site, water = [], demand, supply, conditioners } = state.written();
  const read = {
    site: visitParts.site.safeParse(site),
    water: visitParts.waterAnalysis.array().safeParse(water),
    demand: visitParts.demand.safeParse(demand),
    supply: visitParts.supply.safeParse(supply),
    conditioners: visitParts.conditioner.array().safeParse(conditioners),
  };
  return {
    site: read.site.data,
    water: read.water.data ?? [],
    ...(read.demand.success ? { demand: read.demand.data } : {}),
    ...(read.supply.success ? { supply: read.supply.data } : {}),
    conditioners: read.conditioners.data ?? [],
  };
};
