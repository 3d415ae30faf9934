import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import type { Workshop } from '../../workshop/workshop.ts';
import type { News } from '../event-streams.ts';
import type { House, WorkshopName } from '../house.ts';
import { ProblemError } from '../problem/problems.ts';
import { bringRoutes } from './bring-routes.ts';
import { exportRoutes } from './export-routes.ts';
import { fileRoutes } from './file-routes.ts';
import { readRoutes } from './read-routes.ts';
import { sessionRoutes } from './session-routes.ts';
import { syncRoutes } from './sync-routes.ts';
import { visitRoutes } from './visit-routes.ts';

/** What the routes of one workshop need; the workshop is looked up at each request, since it may be begun later. */
export type ApiOptions = {
  readonly house: House;
  readonly workshop: () => Workshop;
  readonly news: News;
};

export const workshopIn = (house: House, name: WorkshopName): (() => Workshop) =>
  name === 'demo' ? () => house.demo ?? missing('no-demo') : () => house.own() ?? missing('not-begun');

const missing = (code: 'no-demo' | 'not-begun'): never => {
  throw new ProblemError(code);
};

export const workshopApi: FastifyPluginAsyncZod<{
  readonly house: House;
  readonly name: WorkshopName;
  readonly news: News;
}> = async (app, { house, name, news }) => {
  const options: ApiOptions = { house, workshop: workshopIn(house, name), news };
  app.addHook('onSend', async (_, reply) => {
    if (!reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
  });
  await app.register(sessionRoutes, options);
  await app.register(syncRoutes, options);
  await app.register(fileRoutes, options);
  await app.register(readRoutes, options);
  await app.register(visitRoutes, options);
  await app.register(bringRoutes, options);
  await app.register(exportRoutes, options);
};
