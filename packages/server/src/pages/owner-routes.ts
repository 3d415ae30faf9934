import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { House, Side } from '../http/house.ts';
import { ProblemError } from '../http/problem/problems.ts';
import { sendPage, titleOf, viewOf } from './answering.ts';
import { beginPage } from './form-pages.ts';
import { startPage } from './start-page.ts';
import type { View } from './view.ts';

const begun = z.strictObject({ author: z.string().trim().min(1).max(200), name: z.string().trim().max(200) });

/** The first page, and what only the owner at this computer may do. */
export const ownerRoutes: FastifyPluginAsyncZod<{ readonly house: House; readonly side: Side }> = async (
  app,
  { house, side },
) => {
  app.get('/', async (request, reply) => {
    if (side === 'lan') return reply.redirect('/own/', 303);
    const view = viewOf(request, house);
    return sendPage(reply, startPage(view, await startOf(house, view)));
  });
  if (side === 'lan') return;

  app.get('/own/begin', async (request, reply) => {
    if (house.own() !== undefined) return reply.redirect('/own/', 303);
    return sendPage(reply, beginPage(viewOf(request, house)));
  });
  app.post('/own/begin', { schema: { body: begun } }, async (request, reply) => {
    if (house.own() !== undefined) throw new ProblemError('begun-already');
    const { author, name } = request.body;
    const view = viewOf(request, house);
    await house.begin(author, name === '' ? view.word('server.begin.usual-name', { author }) : name);
    return reply.redirect('/own/', 303);
  });

  app.post('/code', async (_, reply) => {
    if (house.own() === undefined) throw new ProblemError('not-begun');
    house.code.draw();
    return reply.redirect('/', 303);
  });
  app.post(
    '/devices/:id/revoke',
    { schema: { params: z.strictObject({ id: z.uuid() }) } },
    async (request, reply) => {
      await house.devices.revoke(request.params.id);
      return reply.redirect('/', 303);
    },
  );
};

const startOf = async (house: House, view: View) => {
  const [own, demo] = [house.own(), house.demo];
  const visitsIn = async (workshop: typeof own): Promise<number> =>
    ((await workshop?.sites()) ?? []).reduce((sum, { folded }) => sum + folded.visits.length, 0);
  return {
    own: own === undefined ? undefined : { title: await titleOf(view, own), visits: await visitsIn(own) },
    demoVisits: demo === undefined ? undefined : await visitsIn(demo),
    devices: await house.devices.list(),
    lan: house.lan(),
    code: house.code.current(),
    dataPlace: house.dataPlace,
  };
};
