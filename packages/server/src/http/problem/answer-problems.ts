import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { problemPage } from '../../pages/problem-page.ts';
import type { House } from '../house.ts';
import { readerOf } from '../reader.ts';
import { problemBodyOf } from './problem-body.ts';
import { problemOf } from './problem-of.ts';
import { type Problem, problemStatus } from './problems.ts';
import { routeBook } from './route-book.ts';

/** Every error of every route ends here, as a page for people and as problem details for programs. */
export const answerProblems = (app: FastifyInstance, house: House): void => {
  const book = routeBook(app);
  app.setErrorHandler((error, request, reply) => {
    const problem = problemOf(error, request.routeOptions.bodyLimit);
    log(request, problem, error);
    return answer(request, reply, problem, house);
  });
  app.setNotFoundHandler((request, reply) => {
    const allowed = book.methodsAt(request.url);
    const problem: Problem =
      allowed.length === 0
        ? { code: 'not-found', values: { path: pathOf(request) } }
        : {
            code: 'wrong-method',
            values: { method: request.method, allowed: allowed.join(', ') },
            headers: { allow: allowed.join(', ') },
          };
    return answer(request, reply, problem, house);
  });
};

export const answer = (
  request: FastifyRequest,
  reply: FastifyReply,
  problem: Problem,
  { usualLanguage }: House,
): FastifyReply => {
  const reader = readerOf(request, usualLanguage);
  const body = problemBodyOf(problem, reader, pathOf(request));
  reply.code(problemStatus[problem.code]).headers({ ...problem.headers, 'cache-control': 'no-store' });
  if (!isForPeople(request))
    return reply.type('application/problem+json; charset=utf-8').serializer(asIs).send(JSON.stringify(body));
  if (problem.code === 'not-paired') return reply.redirect('/pair', 303);
  return reply.type('text/html; charset=utf-8').serializer(asIs).send(problemPage(reader, body));
};

const asIs = (payload: unknown): string => String(payload);

/** Without what stands behind the question mark, which may be personal. */
export const pathOf = ({ url }: FastifyRequest): string => (url.split('?')[0] ?? '').slice(0, 500);

const isForPeople = (request: FastifyRequest): boolean =>
  request.routeOptions.config?.isPage === true ||
  (!/(?:^|\/)api(?:\/|$)/u.test(pathOf(request)) && (request.headers.accept ?? '').includes('text/html'));

const log = (request: FastifyRequest, { code }: Problem, error: unknown): void => {
  if (code === 'our-mistake') request.log.error({ err: error, problem: code }, 'mistake');
  else if (code === 'away' || code === 'full') request.log.warn({ err: error, problem: code }, 'store');
  else request.log.info({ problem: code }, 'problem');
};
