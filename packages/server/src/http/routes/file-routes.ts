import type { Readable } from 'node:stream';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { sizes } from '../limits.ts';
import { megabytes } from '../problem/problem-of.ts';
import { ProblemError } from '../problem/problems.ts';
import type { ApiOptions } from './workshop-api.ts';

const params = z.strictObject({ hash: z.string().regex(/^[0-9a-f]{64}$/u) });

/** Files by the SHA-256 of what is in them, streamed both ways (A1). */
export const fileRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop }) => {
  app.removeAllContentTypeParsers();
  app.addContentTypeParser('*', async (_: unknown, payload: Readable) => payload);
  app.put('/files/:hash', { schema: { tags: ['files'], params } }, async (request, reply) => {
    if (tooLong(request.headers['content-length'])) throw new ProblemError('too-large', { values: limit });
    const { files, company } = workshop();
    const came = await files.receive(company, request.params.hash, upTo(sizes.file, bytesOf(request.body)));
    if (came === 'wrong-hash') throw new ProblemError('wrong-hash');
    if (came === 'too-large') throw new ProblemError('too-large', { values: limit });
    return reply.code(204).send();
  });
  app.get('/files/:hash', { schema: { tags: ['files'], params } }, async (request, reply) => {
    const { files, company } = workshop();
    const { hash } = request.params;
    const file = await files.open(company, hash);
    if (file === undefined) throw new ProblemError('no-such-file');
    return reply
      .headers({
        'content-type': 'application/octet-stream',
        'content-length': file.size,
        'content-disposition': 'attachment',
        'cache-control': 'private, max-age=31536000, immutable',
        etag: `"${hash}"`,
      })
      .send(file.bytes);
  });
};

const limit = { limit: megabytes(sizes.file) };

const tooLong = (length: string | undefined): boolean => Number(length ?? 0) > sizes.file;

const bytesOf = (body: unknown): AsyncIterable<Uint8Array> => {
  if (isIterable(body)) return body;
  throw new ProblemError('nothing-sent');
};

const isIterable = (body: unknown): body is AsyncIterable<Uint8Array> =>
  typeof body === 'object' && body !== null && Symbol.asyncIterator in body;

async function* upTo(most: number, bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let count = 0;
  for await (const part of bytes) {
    count += part.byteLength;
    if (count > most) throw new ProblemError('too-large', { values: limit });
    yield part;
  }
}
