import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { ApiOptions } from './workshop-api.ts';

const session = z.strictObject({
  company: z.uuid(),
  author: z.string(),
  device: z.string().optional(),
  isOwner: z.boolean(),
});

/** For whom this connection speaks: what a device keeps, so that it can write without a network later. */
export const sessionRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop }) => {
  app.get('/session', { schema: { tags: ['sync'], response: { 200: session } } }, async ({ device }) => {
    const { company, owner } = workshop();
    return device === undefined
      ? { company, author: owner, isOwner: true }
      : { company, author: device.name, device: device.id, isOwner: false };
  });
};
