import { stops } from '@brinewright/equipment';
import type { Entry } from '@brinewright/journal';
import { leaveSafeCard, report, workSheet } from '@brinewright/papers';
import { sources } from '@brinewright/physics';
import { visitParts } from '@brinewright/service';
import type { FastifyRequest } from 'fastify';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { House, Side, WorkshopName } from '../http/house.ts';
import { sizes } from '../http/limits.ts';
import { ProblemError } from '../http/problem/problems.ts';
import { authorOf, fileName, orProblem } from '../http/routes/bring-routes.ts';
import { siteIn, visitIn } from '../http/routes/reading.ts';
import { workshopIn } from '../http/routes/workshop-api.ts';
import { entriesOf } from '../workshop/every-entry.ts';
import type { Workshop } from '../workshop/workshop.ts';
import { placeOf, sendPage, viewOf } from './answering.ts';
import { cutawayPage } from './cutaway-page.ts';
import { donePage } from './form-pages.ts';
import { issueList } from './parts.ts';
import { baseOf, siteAddress, visitAddress } from './place.ts';
import { remarkCount } from './remarks.ts';
import { remarksPage } from './site-page.ts';
import { unitPage } from './unit-page.ts';
import { visitPage } from './visit-page.ts';
import { workshopPage } from './workshop-page.ts';

const ofSite = z.strictObject({ stream: z.uuid() });
const ofUnit = ofSite.extend({ conditioner: visitParts.id });
const ofVisit = ofSite.extend({ visit: visitParts.id });
const cut = z.object({
  stop: z.enum(stops).optional().catch(undefined),
  torn: z
    .union([z.literal('none'), z.coerce.number().int().min(1).max(99)])
    .optional()
    .catch(undefined),
});
const chosen = z.strictObject({
  entry: z.uuid(),
  kind: z.string(),
  what: z.string(),
  visit: z.string(),
  conditioner: z.string(),
});

const papers = { report, sheet: workSheet, card: leaveSafeCard } as const;

/** The pages of one workshop. */
export const workshopPages: FastifyPluginAsyncZod<{
  readonly house: House;
  readonly side: Side;
  readonly name: WorkshopName;
  readonly fontUri: string | undefined;
}> = async (app, { house, side, name, fontUri }) => {
  const workshop = workshopIn(house, name);
  /** What every page begins with. */
  const arrive = async (request: FastifyRequest) => {
    const here = workshop();
    const view = viewOf(request, house);
    return { here, view, place: await placeOf(view, name, here, house) };
  };

  app.get('/', async (request, reply) => {
    if (name === 'own' && side === 'loopback' && house.own() === undefined)
      return reply.redirect('/own/begin', 303);
    const { here, view, place } = await arrive(request);
    const [sites, uploaded, inUse] = [await here.sites(), await here.uploaded(), await here.inUse()];
    const ownRemarks = remarkCount(await here.ownRemarks());
    return sendPage(reply, workshopPage(view, { place, sites, uploaded, inUse, ownRemarks }));
  });

  app.get('/remarks', async (request, reply) => {
    const { here, view, place } = await arrive(request);
    const settleAt = `${baseOf(place)}/sites/${here.company}/settle`;
    const title = view.word('server.remarks.own.title');
    return sendPage(reply, remarksPage(view, { place, title, remarks: await here.ownRemarks(), settleAt }));
  });
  app.get('/sites/:stream', { schema: { params: ofSite } }, async (request, reply) => {
    const { stream } = request.params;
    const { here, view, place } = await arrive(request);
    const remarks = await siteIn(here, stream);
    const title = remarks.site?.name ?? view.word('server.site.unknown');
    const settleAt = `${siteAddress(place, stream)}/settle`;
    return sendPage(reply, remarksPage(view, { place, title, remarks, settleAt }));
  });
  app.post('/sites/:stream/settle', { schema: { params: ofSite, body: chosen } }, async (request, reply) => {
    const { stream } = request.params;
    const here = workshop();
    const { rivals } = stream === here.company ? await here.ownRemarks() : await siteIn(here, stream);
    const { entry, kind, what, visit, conditioner } = request.body;
    const rival = rivals.find(
      (one) =>
        one.kind === kind &&
        one.what === what &&
        (one.about.visit ?? '') === visit &&
        (one.about.conditioner ?? '') === conditioner,
    );
    const isSettled =
      rival !== undefined && (await here.settle(authorOf(here, request), stream, rival, entry));
    if (!isSettled) throw new ProblemError('not-settled');
    const back = stream === here.company ? `/${name}/remarks` : `/${name}/sites/${stream}`;
    return reply.redirect(back, 303);
  });

  app.get('/units/:stream/:conditioner', { schema: { params: ofUnit } }, async (request, reply) => {
    const { stream, conditioner } = request.params;
    const { here, view, place } = await arrive(request);
    const site = await siteIn(here, stream);
    const unit = site.conditioners.find(({ id }) => id === conditioner);
    if (unit === undefined) throw new ProblemError('no-such-unit', { values: { unit: conditioner } });
    const family = (await here.inUse()).equipment.families.get(unit.family);
    return sendPage(reply, unitPage(view, { place, stream, site, unit, family }));
  });

  app.get('/visits/:stream/:visit', { schema: { params: ofVisit } }, async (request, reply) => {
    const { stream, visit } = request.params;
    const { here, view, place } = await arrive(request);
    const { site, folded } = await visitIn(here, stream, visit);
    const [entries, { digest }] = [await entriesIn(here, stream, visit), await here.equipmentOf(folded)];
    const shown = { place, stream, site, folded, entries, digest };
    return sendPage(reply, visitPage(view, shown));
  });
  for (const [paper, write] of Object.entries(papers))
    app.get(`/visits/:stream/:visit/${paper}`, { schema: { params: ofVisit } }, async (request, reply) => {
      const { here, view } = await arrive(request);
      const { folded } = await visitIn(here, request.params.stream, request.params.visit);
      const [assessment, equipment] = [await here.assess(folded), await here.equipmentOf(folded)];
      const { language, system } = view.reader;
      const options = { language, system, equipment, sources, ...(fontUri === undefined ? {} : { fontUri }) };
      return sendPage(reply, write(folded.visit, assessment, options));
    });
  app.get(
    '/visits/:stream/:visit/cutaway',
    { schema: { params: ofVisit, querystring: cut } },
    async (request, reply) => {
      const { stream, visit } = request.params;
      const { here, view, place } = await arrive(request);
      const { folded } = await visitIn(here, stream, visit);
      const [assessment, equipment] = [await here.assess(folded), await here.equipmentOf(folded)];
      const shown = { place, stream, folded, assessment, equipment, cut: request.query };
      return sendPage(reply, cutawayPage(view, shown));
    },
  );

  app.post('/visits', { bodyLimit: sizes.document }, async (request, reply) => {
    const { here, view, place } = await arrive(request);
    const { file, text } = await uploaded(request);
    const taken = orProblem(await here.addVisit(authorOf(here, request), file, text));
    const to = visitAddress(place, taken.stream, taken.visit);
    if (taken.issues.length === 0) return reply.redirect(to, 303);
    const title = view.word('server.bring.visit.taken');
    return sendPage(reply, donePage(view, title, to, issueList(view, taken.issues)));
  });
  app.post('/definitions', { bodyLimit: sizes.document }, async (request, reply) => {
    const { here, view, place } = await arrive(request);
    const { file, text } = await uploaded(request);
    const author = authorOf(here, request);
    const { issues } = orProblem(await here.addDefinition(author, file, text), 'definition-faulty');
    if (issues.length === 0) return reply.redirect(`${baseOf(place)}/`, 303);
    const title = view.word('server.bring.definition.taken');
    return sendPage(reply, donePage(view, title, `${baseOf(place)}/`, issueList(view, issues)));
  });
};

const entriesIn = async (
  { store, company }: Workshop,
  stream: string,
  visit: string,
): Promise<readonly Entry[]> =>
  (await entriesOf(store, company, stream)).filter(({ about }) => about.visit === visit);

/** The one file of a form, by the name it had, without any path a browser may send with it. */
const uploaded = async (
  request: FastifyRequest,
): Promise<{ readonly file: string; readonly text: string }> => {
  if (!request.isMultipart()) throw new ProblemError('wrong-type');
  const part = await request.file({ limits: { fileSize: sizes.document } });
  if (part === undefined) throw new ProblemError('nothing-sent');
  const text = (await part.toBuffer()).toString('utf8');
  if (text.trim() === '') throw new ProblemError('nothing-sent');
  const given = fileName.safeParse(part.filename.replace(/^.*[\\/]/u, ''));
  return { file: given.success ? given.data : 'upload.yaml', text };
};
