import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { problemInfoPage } from '../../pages/problem-page.ts';
import type { House, Side } from '../house.ts';
import { isProblemCode, ProblemError } from '../problem/problems.ts';
import { readerOf } from '../reader.ts';

const open = { config: { isOpen: true } };
const state = z.strictObject({ state: z.enum(['alive', 'ready']) });

/** Whether the process lives, whether its store answers, and what it can be asked. */
export const healthRoutes: FastifyPluginAsyncZod<{ readonly house: House; readonly side: Side }> = async (
  app,
  { house },
) => {
  app.get('/health', { ...open, schema: { response: { 200: state } } }, async () => ({
    state: 'alive' as const,
  }));
  app.get('/ready', { ...open, schema: { response: { 200: state } } }, async () => {
    await house.isReady();
    return { state: 'ready' as const };
  });
  for (const prefix of ['/api', '/own/api', '/demo/api'])
    app.get(`${prefix}/openapi.json`, { schema: { hide: true } }, async (_, reply) =>
      reply.send(app.swagger()),
    );
  app.get(
    '/problems/:code',
    {
      config: { isOpen: true, isPage: true },
      schema: { hide: true, params: z.strictObject({ code: z.string() }) },
    },
    async (request, reply) => {
      const { code } = request.params;
      if (!isProblemCode(code)) throw new ProblemError('not-found', { values: { path: request.url } });
      return reply
        .type('text/html; charset=utf-8')
        .send(problemInfoPage(readerOf(request, house.usualLanguage), code));
    },
  );
};
