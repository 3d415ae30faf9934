import type { FastifyInstance, FastifyRequest } from 'fastify';
import { bearer } from './asker.ts';
import type { Side } from './house.ts';
import { ProblemError } from './problem/problems.ts';

const safe = new Set(['GET', 'HEAD', 'OPTIONS']);
const ownNames = new Set(['127.0.0.1', 'localhost', '[::1]']);

/**
 * Keeps pages of other sites out. On loopback the Host must be one of our own names, or a site whose name was made to
 * point here would be taken for us; writes must come from our own pages.
 */
export const guard = (app: FastifyInstance, side: Side): void => {
  app.addHook('onRequest', async (request) => {
    if (side === 'loopback' && !isOwnHost(request)) throw new ProblemError('wrong-host');
    if (!safe.has(request.method) && bearer(request) === undefined && isForeign(request))
      throw new ProblemError('other-origin');
  });
};

const isOwnHost = ({ headers, socket }: FastifyRequest): boolean => {
  const [, name = '', port] = /^(\[[0-9a-f:]+\]|[^:]+)(?::(\d+))?$/iu.exec(headers.host ?? '') ?? [];
  return (
    ownNames.has(name.toLowerCase()) &&
    (socket.localPort === undefined || Number(port ?? 80) === socket.localPort)
  );
};

/** Programs send neither header; browsers send at least one with every write. */
const isForeign = (request: FastifyRequest): boolean => {
  const site = request.headers['sec-fetch-site'];
  if (site !== undefined) return site !== 'same-origin' && site !== 'none';
  const { origin } = request.headers;
  return origin !== undefined && hostOf(origin) !== request.host;
};

const hostOf = (origin: string): string | undefined =>
  URL.canParse(origin) ? new URL(origin).host : undefined;
