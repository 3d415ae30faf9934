import type { FastifyReply, FastifyRequest } from 'fastify';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { sendPage, viewOf } from '../../pages/answering.ts';
import { pairPage } from '../../pages/form-pages.ts';
import { deviceCookie } from '../asker.ts';
import type { House, Side } from '../house.ts';
import { type ProblemCode, ProblemError, problemStatus } from '../problem/problems.ts';

const asked = z.strictObject({
  code: z.string().max(100),
  name: z.string().trim().min(1).max(200),
});

/** As long as browsers keep any cookie. */
const keyLife = 400 * 24 * 60 * 60;

/** How a device from the network is let in, once, with a code that the owner reads to it. */
export const pairRoutes: FastifyPluginAsyncZod<{ readonly house: House; readonly side: Side }> = async (
  app,
  { house, side },
) => {
  app.get('/ca.crt', { config: { isOpen: true }, schema: { hide: true } }, async (request, reply) => {
    const authority = house.lan()?.authority;
    if (authority === undefined) throw new ProblemError('not-found', { values: { path: request.url } });
    return reply
      .headers({
        'content-type': 'application/x-x509-ca-cert',
        'content-disposition': 'attachment; filename="brinewright-ca.crt"',
      })
      .send(authority);
  });
  if (side === 'loopback') return;

  app.get(
    '/pair',
    { config: { isOpen: true, isPage: true }, schema: { hide: true } },
    async (request, reply) =>
      sendPage(reply.header('cache-control', 'no-store'), pairPage(viewOf(request, house))),
  );
  app.post(
    '/pair',
    { config: { isOpen: true }, schema: { tags: ['pairing'], body: asked } },
    async (request, reply) => {
      const { code, name } = request.body;
      const own = house.own();
      const wrong = own === undefined ? 'not-begun' : refused[house.code.try(request.ip, code)];
      if (own === undefined || wrong !== undefined) {
        return refuse(request, reply, wrong ?? 'not-begun', house);
      }
      const { device, key } = await house.devices.pair(own.company, name);
      request.log.info({ device: device.id }, 'paired');
      reply.header('cache-control', 'no-store').setCookie(deviceCookie, key, {
        path: '/',
        httpOnly: true,
        secure: true,
        sameSite: 'strict',
        maxAge: keyLife,
      });
      return isForm(request)
        ? reply.redirect('/own/', 303)
        : reply.code(201).send({ device: device.id, name: device.name, key });
    },
  );
};

/** In a browser the form again, with what was wrong above it. */
const refuse = (
  request: FastifyRequest,
  reply: FastifyReply,
  code: ProblemCode,
  house: House,
): FastifyReply => {
  if (!isForm(request)) throw new ProblemError(code, tooMany(code));
  const view = viewOf(request, house);
  const detail = view.word(`server.problem.${code}.detail`);
  return sendPage(reply.code(problemStatus[code]), pairPage(view, detail));
};

const refused = {
  right: undefined,
  wrong: 'wrong-code',
  none: 'no-code',
  'too-many': 'too-many',
} as const satisfies Record<string, ProblemCode | undefined>;

const tooMany = (code: ProblemCode) => (code === 'too-many' ? { headers: { 'retry-after': '60' } } : {});

const isForm = ({ headers }: FastifyRequest): boolean =>
  (headers['content-type'] ?? '').startsWith('application/x-www-form-urlencoded');
