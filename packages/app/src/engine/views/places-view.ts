import type { FoldedVisit } from '@brinewright/journal';
import { dated } from '@brinewright/papers';
import type { Conditioner } from '@brinewright/service';
import type { SiteOf } from '../sites.ts';
import type { Speech } from '../speech.ts';
import { clockTime, dayHere, longDay } from './days.ts';
import { isCode, shortCode } from './short-code.ts';

export type VisitRow = {
  readonly stream: string;
  readonly visit: string;
  readonly site: string;
  readonly unit: string;
  readonly kind: 'softener' | 'filter' | undefined;
  /** 'Open since 8:34', 'Handed over 14:10'. */
  readonly when: string;
  readonly complaint: string | undefined;
  readonly isOpen: boolean;
};

export type UnitRow = {
  readonly stream: string;
  readonly conditioner: string;
  readonly site: string;
  readonly unit: string;
  readonly kind: 'softener' | 'filter';
  readonly code: string;
  readonly last: string;
};

export type PlacesView = {
  readonly day: string;
  readonly says: string;
  readonly visits: readonly VisitRow[];
  /** What was looked for; all units, newest first, where nothing was. */
  readonly units: readonly UnitRow[];
  readonly isSearch: boolean;
  readonly kept: string;
  readonly families: string;
};

type Place = { readonly site: SiteOf; readonly folded: FoldedVisit };

export const placesView = (
  sites: readonly SiteOf[],
  families: number,
  query: string,
  speech: Speech,
  now: string,
): PlacesView => {
  const visits = sites
    .flatMap((site) => site.folded.visits.map((folded): Place => ({ site, folded })))
    .toSorted((a, b) => latestFirst(a.folded, b.folded));
  const shown = visits.filter(({ folded }) => isOpen(folded) || isOfDay(folded, now));
  const open = shown.filter(({ folded }) => isOpen(folded)).length;
  return {
    day: longDay(speech, now),
    says: speech.word('app.start.visits', { open }),
    visits: [
      ...shown.filter(({ folded }) => isOpen(folded)),
      ...shown.filter(({ folded }) => !isOpen(folded)),
    ].map((place) => visitRow(place, speech, now)),
    units: unitRows(sites, query, speech).slice(0, 20),
    isSearch: query.trim() !== '',
    kept: speech.word('app.start.kept', { visits: visits.length }),
    families: speech.word('app.start.families', { families }),
  };
};

const isOpen = ({ handedOver }: FoldedVisit): boolean => handedOver === undefined;

const isOfDay = ({ started, last }: FoldedVisit, now: string): boolean =>
  [started.at, last.at].some((at) => dayHere(at) === dayHere(now));

const latestFirst = (a: FoldedVisit, b: FoldedVisit): number => {
  if (a.last.at === b.last.at) return a.id < b.id ? -1 : 1;
  return a.last.at < b.last.at ? 1 : -1;
};

const visitRow = ({ site, folded }: Place, speech: Speech, now: string): VisitRow => {
  const { visit, id } = folded;
  const unit = visit.conditioners.find((one) => one.id === visit.subject);
  return {
    stream: site.stream,
    visit: id,
    site: siteName(site),
    unit: unitName(unit, speech),
    kind: unit?.kind,
    when: whenOf(folded, speech, now),
    complaint: visit.complaint === undefined ? undefined : speech.text(visit.complaint.words),
    isOpen: isOpen(folded),
  };
};

const siteName = ({ folded }: SiteOf): string => folded.site?.name ?? folded.visits[0]?.visit.site.name ?? '';

/** The name given to it, else what it is. */
export const unitName = (unit: Conditioner | undefined, speech: Speech): string =>
  unit?.name ?? speech.word(unit?.kind === 'filter' ? 'app.start.filter' : 'app.start.softener');

const whenOf = (folded: FoldedVisit, speech: Speech, now: string): string => {
  const at = folded.handedOver?.at ?? folded.started.at;
  const time = dayHere(at) === dayHere(now) ? clockTime(at) : dated(speech, dayHere(at));
  return speech.word(isOpen(folded) ? 'app.start.open-since' : 'app.start.handed-over', { time });
};

const unitRows = (sites: readonly SiteOf[], query: string, speech: Speech): readonly UnitRow[] => {
  const words = plain(query)
    .split(' ')
    .filter((word) => word !== '');
  const all = sites.flatMap((site) => site.folded.conditioners.map((unit) => unitRow(site, unit, speech)));
  return all
    .filter(
      ({ row, text }) =>
        words.length === 0 || isCode(query, row.code) || words.every((word) => text.includes(word)),
    )
    .toSorted((a, b) => (a.last === b.last ? (a.text < b.text ? -1 : 1) : a.last < b.last ? 1 : -1))
    .map(({ row }) => row);
};

const unitRow = (site: SiteOf, unit: Conditioner, speech: Speech) => {
  const last = site.folded.visits
    .filter(({ visit }) => visit.subject === unit.id)
    .map(({ last: said }) => said.at)
    .toSorted()
    .at(-1);
  const row: UnitRow = {
    stream: site.stream,
    conditioner: unit.id,
    site: siteName(site),
    unit: unitName(unit, speech),
    kind: unit.kind,
    code: shortCode(site.stream, unit.id),
    last: last === undefined ? '' : dated(speech, dayHere(last)),
  };
  return { row, last: last ?? '', text: plain(`${row.site} ${row.unit} ${site.folded.site?.address ?? ''}`) };
};

/** Accents and capitals make no difference in a search. */
const plain = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/gu, ' ').trim();
