import {
  offerReply,
  offerRequest,
  pullReply,
  pullRequest,
  pushReply,
  pushRequest,
} from '@brinewright/journal';
import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import { askerOf } from '../asker.ts';
import type { ApiOptions } from './workshop-api.ts';

/** How devices and the workshop meet: push, pull, offer, and news of the log. */
export const syncRoutes: FastifyPluginAsyncZod<ApiOptions> = async (app, { workshop, news, house }) => {
  app.post(
    '/sync/push',
    { schema: { tags: ['sync'], body: pushRequest, response: { 200: pushReply } } },
    async (request) => workshop().push(askerOf(request), request.body),
  );
  app.post(
    '/sync/pull',
    { schema: { tags: ['sync'], body: pullRequest, response: { 200: pullReply } } },
    async (request) => workshop().pull(askerOf(request), request.body),
  );
  app.post(
    '/sync/offer',
    { schema: { tags: ['sync'], body: offerRequest, response: { 200: offerReply } } },
    async (request) => workshop().offer(askerOf(request), request.body),
  );
  app.get('/sync/events', { schema: { tags: ['sync'] } }, async ({ device }, reply) => {
    const isStillLetIn = async (): Promise<boolean> =>
      device === undefined || house.devices.isLetIn(device.id);
    await news.listen(reply, workshop(), isStillLetIn);
  });
};
