import { type VisitDocument, visitSchema } from '@brinewright/service';
import { formatText, type Text } from '@brinewright/words';
import { z } from 'zod';
import { everyEntry } from './every-entry.ts';
import type { SiteOf } from './log-follower.ts';
import { unitLines } from './unit-line.ts';
import { dayOf, visitLines } from './visit-line.ts';
import type { Workshop } from './workshop.ts';

/*
 * The record as tables for a spreadsheet. Column names are part of the export, not words for readers; quantities stand
 * as they were entered, with their unit.
 */

type Cell = string | number | boolean | undefined;
export type Row = readonly Cell[];
export type Table = {
  readonly columns: readonly string[];
  readonly rows: (workshop: Workshop) => AsyncIterable<Row>;
};

type Seen = {
  readonly site: SiteOf;
  readonly visit: VisitDocument;
  readonly day: string;
  /** stream, site, visit, date: what every row of a visit begins with. */
  readonly head: readonly string[];
};

async function* visits(workshop: Workshop): AsyncGenerator<Seen> {
  for (const site of await workshop.sites())
    for (const one of site.folded.visits) {
      const day = dayOf(one);
      const head = [site.stream, one.visit.site.name, one.id, day];
      yield { site, visit: z.encode(visitSchema, one.visit), day, head };
    }
}

const headColumns = ['stream', 'site', 'visit', 'date'] as const;

/** A table with any number of rows for each visit. */
const perVisit = (columns: readonly string[], rowsOf: (seen: Seen) => readonly Row[]): Table => ({
  columns: [...headColumns, ...columns],
  rows: async function* (workshop) {
    for await (const seen of visits(workshop)) for (const row of rowsOf(seen)) yield [...seen.head, ...row];
  },
});

const perSite = (columns: readonly string[], rowsOf: (site: SiteOf) => readonly Row[]): Table => ({
  columns,
  rows: async function* (workshop) {
    for (const site of await workshop.sites()) yield* rowsOf(site);
  },
});

const words = (text: Text | undefined): string | undefined =>
  text === undefined ? undefined : formatText(text, 'en');

const settingRows = ({ visit }: Seen): readonly Row[] =>
  (['found', 'set'] as const).flatMap((state) =>
    Object.entries(visit.settings?.[state] ?? {}).map(([setting, value]) => [
      visit.subject,
      state,
      setting,
      String(value),
    ]),
  );

export const tables = {
  sites: perSite(['stream', 'name', 'address', 'uses', 'units', 'visits', 'last visit'], (one) => {
    const { stream, folded } = one;
    const [last] = visitLines(one);
    const { name, address, uses = [] } = folded.site ?? {};
    return [
      [stream, name, address, uses.join(' '), folded.conditioners.length, folded.visits.length, last?.day],
    ];
  }),
  units: perSite(['stream', 'site', 'unit', 'name', 'kind', 'family', 'visits', 'last visit'], (one) =>
    unitLines(one).map(({ stream, site, unit, visits: count, lastVisit }) => [
      stream,
      site,
      unit.id,
      unit.name,
      unit.kind,
      unit.family,
      count,
      lastVisit,
    ]),
  ),
  visits: perVisit(
    ['unit', 'by', 'company', 'complaint', 'state', 'handed to', 'entries', 'started', 'last entry'],
    ({ site, visit }) => {
      const folded = site.folded.visits.find(({ id }) => id === visit.id);
      return [
        [
          visit.subject,
          visit.by?.name,
          visit.by?.company,
          words(visit.complaint?.words),
          folded?.handedOver === undefined ? 'open' : 'handed over',
          visit.handOver?.to,
          folded?.entries,
          folded?.started.at,
          folded?.last.at,
        ],
      ];
    },
  ),
  answers: perVisit(['unit', 'tell', 'answer', 'unsure'], ({ visit }) =>
    (visit.answers ?? []).map(({ tell, conditioner, answer, unsure }) => [
      conditioner ?? visit.subject,
      tell,
      answer,
      unsure,
    ]),
  ),
  readings: perVisit(['unit', 'test', 'value', 'state', 'uncertainty', 'at'], ({ visit }) =>
    (visit.readings ?? []).map(({ test, conditioner, value, state, u, at }) => [
      conditioner ?? visit.subject,
      test,
      value,
      state,
      u,
      at,
    ]),
  ),
  settings: perVisit(['unit', 'state', 'setting', 'value'], settingRows),
  operations: perVisit(['unit', 'operation', 'instance', 'counted', 'at'], ({ visit }) =>
    (visit.done ?? []).map(({ operation, instance, counted, at }) => [
      visit.subject,
      operation,
      instance,
      Object.entries(counted ?? {})
        .map(([what, count]) => `${what} ${count}`)
        .join(', '),
      at,
    ]),
  ),
  'parts-used': perVisit(['unit', 'part', 'count'], ({ visit }) =>
    (visit.used ?? []).map(({ part, count }) => [visit.subject, part, count]),
  ),
  proofs: perVisit(['unit', 'check', 'value', 'state', 'uncertainty', 'at'], ({ visit }) =>
    (visit.proofs ?? []).map(({ check, value, state, u, at }) => [visit.subject, check, value, state, u, at]),
  ),
  stock: {
    columns: ['stream', 'place', 'part', 'count', 'counted at', 'counted by'],
    rows: async function* (workshop) {
      for (const { stream, folded } of await workshop.stock())
        for (const { part, count, since } of folded.lines)
          yield [stream, folded.name, part, count, since?.at, since?.author];
    },
  },
  entries: {
    columns: [
      ...['position', 'id', 'stream', 'device', 'seq', 'lamport', 'kind', 'visit', 'unit', 'author'],
      ...['wall', 'zone', 'app', 'pusher', 'received', 'hash', 'payload'],
    ],
    rows: async function* ({ store, company }) {
      for await (const { position, entry, hash, pusher, received } of everyEntry(store, company)) {
        const { id, stream, device, seq, lamport, kind, about, author, wall, zone, app, payload } = entry;
        yield [
          ...[position, id, stream, device, seq, lamport, kind, about.visit, about.conditioner, author],
          ...[wall, zone, app, pusher, received, hash, JSON.stringify(payload)],
        ];
      }
    },
  },
} as const satisfies Readonly<Record<string, Table>>;

export type TableName = keyof typeof tables;
export const tableNames = Object.keys(tables).filter(isTableName);

export function isTableName(name: string): name is TableName {
  return Object.hasOwn(tables, name);
}
