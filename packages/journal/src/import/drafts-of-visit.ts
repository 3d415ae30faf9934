import { type Visit, type VisitDocument, visitParts, visitSchema } from '@brinewright/service';
import canonicalize from 'canonicalize';
import { z } from 'zod';
import type { About, Draft, Json } from '../entry/entry.ts';
import type { FoldedSite } from '../fold/folded.ts';
import { leavesOf, objectOf } from '../fold/registers.ts';
import { groupsOfConditioner } from '../fold/site-state.ts';
import type { KindName } from '../kinds/payloads.ts';
import { kindNow } from '../kinds/versions.ts';

type Say = (kind: KindName, payload: unknown, about?: About) => Draft;

/** The site a visit goes to, as far as it is known, and the file that holds the definitions it pins. */
export type Into = {
  readonly stream: string;
  readonly known?: FoldedSite | undefined;
  readonly definitionsFile?: string | undefined;
};

/**
 * A written visit as entries of its site's stream, in the order in which a technician would have made them. Of a site
 * that is known, only what differs is said again. Folding them gives the same visit.
 */
export const draftsOfVisit = (visit: Visit, { stream, known, definitionsFile }: Into): readonly Draft[] => {
  const document = z.encode(visitSchema, visit);
  const say: Say = (kind, payload, about = {}) => ({
    stream,
    kind: kindNow(kind),
    payload: toJson(payload),
    about,
  });
  return [
    ...ofSite(document, known === undefined ? nothing : writtenSite(known), say),
    ...ofUnits(document, known === undefined ? nothing : writtenSite(known), say),
    ...ofVisit(document, definitionsFile, (kind, payload, about) =>
      say(kind, payload, { visit: visit.id, ...about }),
    ),
  ];
};

/** What a visit document says of the site, as far as it is known already. */
type Known = Partial<Pick<VisitDocument, 'site' | 'water' | 'demand' | 'supply' | 'conditioners'>>;
const nothing: Known = {};

const writtenSite = ({ site, water, demand, supply, conditioners }: FoldedSite): Known => ({
  ...(site === undefined ? {} : { site: z.encode(visitParts.site, site) }),
  water: water.map((one) => z.encode(visitParts.waterAnalysis, one)),
  ...(demand === undefined ? {} : { demand: z.encode(visitParts.demand, demand) }),
  ...(supply === undefined ? {} : { supply: z.encode(visitParts.supply, supply) }),
  conditioners: conditioners.map((one) => z.encode(visitParts.conditioner, one)),
});

const ofSite = ({ site, water = [], demand, supply }: VisitDocument, known: Known, say: Say) => [
  ...(known.site === undefined
    ? [say('site-opened', site)]
    : saidAnew(known.site, site).map((change) => say('site-described', change))),
  ...water
    .filter((analysis) => !(known.water ?? []).some((one) => isSame(one, analysis)))
    .map((analysis) => say('water-analysed', analysis)),
  ...saidAnew(known.demand, demand).map((change) => say('demand-described', change)),
  ...saidAnew(known.supply, supply).map((change) => say('supply-described', change)),
];

const ofUnits = ({ conditioners }: VisitDocument, known: Known, say: Say) =>
  conditioners.flatMap(({ id, ...unit }) => {
    const about = { conditioner: id };
    const before = known.conditioners?.find((one) => one.id === id);
    if (before === undefined) return [say('conditioner-added', unit, about)];
    const { id: _, ...old } = before;
    return saidAnew(old, unit, groupsOfConditioner).map((change) =>
      say('conditioner-described', change, about),
    );
  });

const ofVisit = (document: VisitDocument, file: string | undefined, say: Say): readonly Draft[] => {
  const { subject, definitions, date, by, note, complaint, history, apart, gate, settings, handOver } =
    document;
  const { meterNow: volume, lastRegeneration, stock } = document;
  const pinned = definitions === undefined ? undefined : { digest: definitions, file };
  const one = (kind: KindName, payload: unknown): readonly Draft[] =>
    payload === undefined ? [] : [say(kind, payload)];
  const each = (kind: KindName, payloads: readonly unknown[] = []): readonly Draft[] =>
    payloads.map((payload) => say(kind, payload));
  return [
    say('visit-started', { subject, definitions: pinned, date, by }),
    ...one('visit-noted', note === undefined ? undefined : { note }),
    ...one('complaint-told', complaint),
    ...one('history-told', history),
    ...one('stock-listed', stock === undefined ? undefined : { lines: stock }),
    ...one('meter-read', (volume ?? lastRegeneration) ? { volume, lastRegeneration } : undefined),
    ...one('setting-found', settings?.found),
    ...byUnit('tell-answered', document.answers, say),
    ...byUnit('reading-taken', document.readings, say),
    ...each('decision-made', document.decided),
    ...each('caution-acknowledged', document.acknowledged),
    ...one('gate-checked', gate),
    ...one('apart-noted', apart),
    ...each('operation-done', document.done?.map(withoutEntry)),
    ...each('part-used', numbered(document.used ?? [])),
    ...one('setting-set', settings?.set),
    ...each('proof-reading-taken', document.proofs?.map(withoutEntry)),
    ...each('photo-taken', document.photos),
    ...each('signature-given', document.signatures),
    ...one('handed-over', handOver),
  ];
};

/** Answers and readings carry the unit they belong to beside them, and their place in the journal not at all. */
const byUnit = (
  kind: KindName,
  given: readonly { readonly conditioner?: string | undefined; readonly entry?: string | undefined }[] = [],
  say: Say,
): readonly Draft[] =>
  given.map(({ conditioner, entry: _, ...payload }) => say(kind, payload, { conditioner }));

const withoutEntry = <T extends { readonly entry?: string | undefined }>({ entry: _, ...rest }: T) => rest;

/** The same part on two lines is two parts: the second gets a number of its own. */
const numbered = (used: NonNullable<VisitDocument['used']>) =>
  used.map((line, place) => {
    const before = used.slice(0, place).filter(({ part }) => part === line.part).length;
    return before === 0 ? line : { ...line, instance: before + 1 };
  });

/** The single values that differ from what is known, as one payload; nothing where none does. */
const saidAnew = (known: unknown, now: unknown, groups: readonly string[] = []): readonly Json[] => {
  if (now === undefined) return [];
  const before = new Map(
    leavesOf(toJson(known ?? {}), groups).map(([path, value]) => [path.join('.'), value]),
  );
  const changed = leavesOf(toJson(now), groups).filter(([path, value]) => {
    const old = before.get(path.join('.'));
    return old === undefined || !isSame(old, value);
  });
  return changed.length === 0 ? [] : [objectOf(changed)];
};

const isSame = (a: unknown, b: unknown): boolean => canonicalize(a) === canonicalize(b);

/** Plain JSON: what is undefined is not there. */
const toJson = (value: unknown): Json => z.json().parse(JSON.parse(JSON.stringify(value)));
