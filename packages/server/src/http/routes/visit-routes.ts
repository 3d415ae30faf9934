import { visitJsonSchema, visitParts, visitSchema, writeVisit } from '@brinewright/service';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { assessmentBody } from '../assessment-body.ts';
import { readerOf } from '../reader.ts';
import { visitIn } from './reading.ts';
import type { ApiOptions } from './workshop-api.ts';

const params = z.strictObject({ stream: z.uuid(), visit: visitParts.id });
const format = z.strictObject({ format: z.enum(['json', 'yaml']).optional() });
const view = z.strictObject({
  effort: z.enum(['quick', 'full']).optional(),
  lang: z.enum(['en', 'es']).optional(),
  system: z.enum(['us', 'metric']).optional(),
});

/** One visit: the document, and what it comes to. */
export const visitRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop, house }) => {
  app.get(
    '/visits/:stream/:visit',
    { schema: { tags: ['read'], params, querystring: format } },
    async (request, reply) => {
      const { folded } = await visitIn(workshop(), request.params.stream, request.params.visit);
      return request.query.format === 'yaml'
        ? reply.type('application/yaml; charset=utf-8').send(writeVisit(folded.visit))
        : reply.send(z.encode(visitSchema, folded.visit));
    },
  );

  app.get(
    '/visits/:stream/:visit/assessment',
    { schema: { tags: ['read'], params, querystring: view } },
    async (request, reply) => {
      const { folded } = await visitIn(workshop(), request.params.stream, request.params.visit);
      const assessment = await workshop().assess(folded, request.query.effort ?? 'full');
      return reply.send(assessmentBody(folded.visit, assessment, readerOf(request, house.usualLanguage)));
    },
  );

  app.get('/visit.schema.json', { schema: { tags: ['read'] } }, async (_, reply) =>
    reply.type('application/schema+json').send(JSON.stringify(visitJsonSchema())),
  );
};
