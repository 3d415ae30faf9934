import type { FastifyRequest } from 'fastify';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { bundleSchema, importEntries } from '../../workshop/bundle.ts';
import type { DefinitionTaken, VisitTaken, Workshop } from '../../workshop/workshop.ts';
import { askerOf } from '../asker.ts';
import { sizes } from '../limits.ts';
import { issueBodyOf } from '../problem/problem-body.ts';
import { type Problem, type ProblemCode, ProblemError } from '../problem/problems.ts';
import { readerOf } from '../reader.ts';
import { definitionTaken, imported, visitTaken } from './bodies.ts';
import type { ApiOptions } from './workshop-api.ts';

export const fileName = z
  .string()
  .min(1)
  .max(100)
  .regex(/^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u);
const named = z.strictObject({ name: fileName.optional() });
const text = z.string();

/** What is brought in by hand: written visits, definitions, whole records. */
export const bringRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop, house }) => {
  app.addContentTypeParser(
    ['application/yaml', 'text/yaml', 'application/x-yaml', 'text/plain'],
    { parseAs: 'string', bodyLimit: sizes.document },
    (_, body, done) => done(null, body),
  );

  app.post(
    '/visits',
    {
      bodyLimit: sizes.document,
      schema: { tags: ['bring'], querystring: named, body: text, response: { 201: visitTaken } },
    },
    async (request, reply) => {
      const author = authorOf(workshop(), request);
      const file = request.query.name ?? 'visit.yaml';
      const taken = orProblem(await workshop().addVisit(author, file, request.body));
      const reader = readerOf(request, house.usualLanguage);
      const issues = taken.issues.map((issue) => issueBodyOf(issue, reader));
      return reply.code(201).send({ stream: taken.stream, visit: taken.visit, issues });
    },
  );

  app.post(
    '/definitions',
    {
      bodyLimit: sizes.document,
      schema: {
        tags: ['bring'],
        querystring: named.required(),
        body: text,
        response: { 201: definitionTaken },
      },
    },
    async (request, reply) => {
      const author = authorOf(workshop(), request);
      const { name } = request.query;
      const { file, issues } = orProblem(
        await workshop().addDefinition(author, name, request.body),
        'definition-faulty',
      );
      const reader = readerOf(request, house.usualLanguage);
      return reply.code(201).send({ name, file, issues: issues.map((issue) => issueBodyOf(issue, reader)) });
    },
  );

  app.post(
    '/import',
    {
      bodyLimit: sizes.bundle,
      schema: { tags: ['bring'], body: bundleSchema, response: { 200: imported } },
    },
    async (request) => {
      const { kept, known, refused } = await importEntries(
        workshop(),
        askerOf(request),
        request.body.entries,
      );
      return { kept, known, refused: refused.map(({ id, reason }) => ({ id, reason })) };
    },
  );
};

/** Who stands behind what is brought in: the owner by name, a device by what it is called. */
export const authorOf = (workshop: Workshop, { device }: FastifyRequest): string =>
  device?.name ?? workshop.owner;

type Taken<T> = Extract<T, { readonly state: 'taken' }>;

/** What was taken, or the problem that kept it out. */
export const orProblem = <T extends VisitTaken | DefinitionTaken>(
  taken: T,
  faulty: 'visit-faulty' | 'definition-faulty' = 'visit-faulty',
): Taken<T> => {
  if (isTaken(taken)) return taken;
  const { code, ...more } = refusal(taken, faulty);
  throw new ProblemError(code, more);
};

const isTaken = <T extends VisitTaken | DefinitionTaken>(taken: T): taken is Taken<T> =>
  taken.state === 'taken';

const refusal = (taken: VisitTaken | DefinitionTaken, faulty: ProblemCode): Problem => {
  switch (taken.state) {
    case 'definition':
      return { code: 'is-definition' };
    case 'there-already':
      return { code: 'visit-there', values: { visit: taken.visit, site: taken.site } };
    case 'faulty':
      return { code: faulty, issues: taken.issues };
    default:
      return { code: 'our-mistake' };
  }
};
