import { historyOf } from '@brinewright/journal';
import { visitParts, visitSchema } from '@brinewright/service';
import { formatText, type Language } from '@brinewright/words';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { unitLines } from '../../workshop/unit-line.ts';
import { newestFirst, type VisitLine, visitLines } from '../../workshop/visit-line.ts';
import { issueBodyOf } from '../problem/problem-body.ts';
import { ProblemError } from '../problem/problems.ts';
import { readerOf } from '../reader.ts';
import { historyBody, partsUsed, siteBody, siteLine, stockBody, unitLine, visitLineBody } from './bodies.ts';
import { countRemarks, siteIn } from './reading.ts';
import type { ApiOptions } from './workshop-api.ts';

const ofSite = z.strictObject({ stream: z.uuid() });
const ofUnit = ofSite.extend({ conditioner: visitParts.id });

/** What the record comes to: sites, units, visits, parts, stock. */
export const readRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop, house }) => {
  app.get('/sites', { schema: { tags: ['read'], response: { 200: z.array(siteLine) } } }, async () =>
    (await workshop().sites()).map(({ stream, folded }) => {
      const [last] = visitLines({ stream, folded });
      return {
        stream,
        name: folded.site?.name ?? '',
        ...(folded.site?.address === undefined ? {} : { address: folded.site.address }),
        units: folded.conditioners.length,
        visits: folded.visits.length,
        ...(last === undefined ? {} : { lastVisit: last.day }),
        remarks: countRemarks(folded),
      };
    }),
  );

  app.get(
    '/sites/:stream',
    { schema: { tags: ['read'], params: ofSite, response: { 200: siteBody } } },
    async (request) => {
      const { stream } = request.params;
      const folded = await siteIn(workshop(), stream);
      const reader = readerOf(request, house.usualLanguage);
      return {
        stream,
        site: folded.site === undefined ? null : z.encode(visitParts.site, folded.site),
        conditioners: folded.conditioners.map((unit) => z.encode(visitParts.conditioner, unit)),
        visits: visitLines({ stream, folded }).map((line) => lineBody(line, reader.language)),
        rivals: folded.rivals.map((rival) => ({ ...rival, values: [...rival.values] })),
        setAside: folded.setAside.map(({ issues, ...one }) => ({
          ...one,
          issues: issues.map((issue) => issueBodyOf(issue, reader)),
        })),
        waiting: [...folded.waiting],
        newer: [...folded.newer],
      };
    },
  );

  app.get('/units', { schema: { tags: ['read'], response: { 200: z.array(unitLine) } } }, async () =>
    (await workshop().sites()).flatMap(unitLines).map(({ unit, ...line }) => ({
      ...line,
      conditioner: unit.id,
      ...(unit.name === undefined ? {} : { name: unit.name }),
      kind: unit.kind,
      family: unit.family,
    })),
  );

  app.get(
    '/units/:stream/:conditioner/history',
    { schema: { tags: ['read'], params: ofUnit, response: { 200: historyBody } } },
    async ({ params: { stream, conditioner } }) => {
      const site = await siteIn(workshop(), stream);
      if (!site.conditioners.some(({ id }) => id === conditioner))
        throw new ProblemError('no-such-unit', { values: { unit: conditioner } });
      return historyOf(site, conditioner).map((line) => {
        const { visit, date, by, isHandedOver } = line;
        const folded = site.visits.find(({ id }) => id === visit);
        const { complaint, used, settings, readings, proofs } =
          folded === undefined ? {} : z.encode(visitSchema, folded.visit);
        return { visit, date, by, complaint, used, set: settings?.set, readings, proofs, isHandedOver };
      });
    },
  );

  app.get(
    '/visits',
    { schema: { tags: ['read'], response: { 200: z.array(visitLineBody) } } },
    async (request) => {
      const { language } = readerOf(request, house.usualLanguage);
      const lines = (await workshop().sites()).flatMap(visitLines).toSorted(newestFirst);
      return lines.map((line) => lineBody(line, language));
    },
  );

  app.get('/parts-used', { schema: { tags: ['read'], response: { 200: partsUsed } } }, async () =>
    (await workshop().sites()).flatMap(visitLines).flatMap(({ stream, site, folded, day }) =>
      (folded.visit.used ?? []).map(({ part, count }) => ({
        stream,
        site,
        visit: folded.id,
        date: day,
        unit: folded.visit.subject,
        part,
        count,
      })),
    ),
  );

  app.get('/stock', { schema: { tags: ['read'], response: { 200: stockBody } } }, async () =>
    (await workshop().stock()).map(({ stream, folded }) => ({
      place: stream,
      ...(folded.name === undefined ? {} : { name: folded.name }),
      lines: [...folded.lines],
      belowZero: [...folded.belowZero],
      remarks: countRemarks(folded),
    })),
  );
};

const lineBody = ({ stream, site, folded, day }: VisitLine, language: Language) => {
  const { visit, started, last, entries, handedOver } = folded;
  const by = visit.by?.name;
  return {
    stream,
    visit: folded.id,
    site,
    date: day,
    unit: visit.subject,
    ...(by === undefined ? {} : { by }),
    ...(visit.complaint === undefined ? {} : { complaint: formatText(visit.complaint.words, language) }),
    state: handedOver === undefined ? ('open' as const) : ('handed-over' as const),
    entries,
    started,
    last,
  };
};
