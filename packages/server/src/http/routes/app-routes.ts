import { extname } from 'node:path';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { AppFile, AppFiles } from '../app-files.ts';
import type { WorkshopName } from '../house.ts';
import { ProblemError } from '../problem/problems.ts';

/** Nothing inline and nothing from elsewhere; photos and drawings made on the device. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "style-src 'self'",
  /* Patterns of drawings are named in attributes. */
  "style-src-attr 'unsafe-inline'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "manifest-src 'self'",
  "base-uri 'self'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const anyPath = z.strictObject({ '*': z.string().max(500) });

/**
 * The field app below `/own/app/` and `/demo/app/`. A name with an ending is a file; every other address is a place in
 * the app, and gets the page that finds it.
 */
export const appRoutes: FastifyPluginAsyncZod<{
  readonly files: AppFiles;
  readonly name: WorkshopName;
}> = async (app, { files, name }) => {
  const base = `/${name}/app/`;
  const index = pageAt(files, base);
  app.get('', { schema: { hide: true } }, async (_, reply) => reply.redirect(base, 308));
  app.get('/*', { schema: { hide: true, params: anyPath } }, async (request, reply) => {
    const path = request.params['*'];
    if (extname(path) === '') return sendFile(request, reply, index, 'no-cache');
    const file = files.get(path);
    if (file === undefined) throw new ProblemError('not-found');
    return sendFile(request, reply, file, path.startsWith('assets/') ? forEver : 'no-cache');
  });
};

/** Names in `assets/` change with what is in them. */
const forEver = 'private, max-age=31536000, immutable';

/** The page with its base in full, so that a deep address finds its files. */
const pageAt = (files: AppFiles, base: string): AppFile => {
  const text = files.get('index.html')?.bytes.toString('utf8') ?? '';
  const bytes = Buffer.from(text.replace('<base href="./"', `<base href="${base}"`));
  return { type: 'text/html; charset=utf-8', bytes, zipped: bytes };
};

const sendFile = (
  request: FastifyRequest,
  reply: FastifyReply,
  { type, bytes, zipped }: AppFile,
  cache: string,
): FastifyReply => {
  const isZipped = zipped.length < bytes.length && /\bgzip\b/u.test(request.headers['accept-encoding'] ?? '');
  return reply
    .headers({
      'content-type': type,
      'cache-control': cache,
      'content-security-policy': policy,
      vary: 'accept-encoding',
      ...(isZipped ? { 'content-encoding': 'gzip' } : {}),
    })
    .send(isZipped ? zipped : bytes);
};
