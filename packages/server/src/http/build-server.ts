import { engine } from '@brinewright/service';
import cookie from '@fastify/cookie';
import formbody from '@fastify/formbody';
import helmet from '@fastify/helmet';
import multipart from '@fastify/multipart';
import rateLimit from '@fastify/rate-limit';
import swagger from '@fastify/swagger';
import Fastify, { type FastifyServerOptions } from 'fastify';
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  type ZodTypeProvider,
} from 'fastify-type-provider-zod';
import { pageRoutes } from '../pages/page-routes.ts';
import { letIn } from './asker.ts';
import { endStreams, newsOf } from './event-streams.ts';
import { guard } from './guard.ts';
import type { House, Side } from './house.ts';
import { rates, sizes, type Times } from './limits.ts';
import { answer, answerProblems } from './problem/answer-problems.ts';
import { malformedRequest } from './problem/malformed-request.ts';
import { problemOf } from './problem/problem-of.ts';
import { rawServer, type Tls } from './raw-server.ts';
import { appRoutes } from './routes/app-routes.ts';
import { healthRoutes } from './routes/health-routes.ts';
import { pairRoutes } from './routes/pair-routes.ts';
import { workshopApi } from './routes/workshop-api.ts';
import { checkMessages } from './validation.ts';

export type Listener = {
  readonly side: Side;
  readonly times: Times;
  readonly logger: FastifyServerOptions['logger'];
  readonly tls?: Tls;
  readonly behindProxy?: boolean;
};

/** The same server for both listeners; what each side may see differs, not how it is served. */
export const buildServer = (house: House, { side, times, logger, tls, behindProxy }: Listener) => {
  const app = Fastify({
    logger: logger ?? false,
    bodyLimit: sizes.message,
    trustProxy: (_, hop) => behindProxy === true && hop === 0,
    routerOptions: { maxParamLength: 200 },
    onProtoPoisoning: 'error',
    clientErrorHandler: malformedRequest,
    frameworkErrors: (error, request, reply) => void answer(request, reply, problemOf(error), house),
    serverFactory: (handler) => rawServer(times, tls, handler),
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(checkMessages);
  app.setSerializerCompiler(serializerCompiler);
  answerProblems(app, house);

  void app.register(cookie);
  void app.register(helmet, securityHeaders);
  void app.register(rateLimit, { max: rates[side], timeWindow: 60_000 });
  void app.register(formbody, { bodyLimit: sizes.document });
  void app.register(multipart, { limits: { fileSize: sizes.bundle, files: 1, fields: 10 } });
  void app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Brinewright', version: engine.replace(/^.*\//u, '') },
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  void app.register(async (inner) => {
    guard(inner, side);
    letIn(inner, house, side);
    await inner.register(healthRoutes, { house, side });
    await inner.register(pairRoutes, { house, side });
    await inner.register(pageRoutes, { house, side });
    if (house.app !== undefined)
      for (const name of side === 'loopback' ? (['own', 'demo'] as const) : (['own'] as const))
        await inner.register(appRoutes, { prefix: `/${name}/app`, files: house.app, name });
    const news = newsOf(times.heartBeat);
    endStreams(inner, news);
    await inner.register(workshopApi, { prefix: '/own/api', house, name: 'own', news });
    if (side === 'loopback')
      await inner.register(workshopApi, { prefix: '/demo/api', house, name: 'demo', news });
  });
  return app;
};

/** No script at all; style within pages and drawings; the typeface of papers as data. */
const securityHeaders = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'none'"],
      styleSrc: ["'self'", "'unsafe-inline'"],
      fontSrc: ["'self'", 'data:'],
      imgSrc: ["'self'", 'data:'],
      formAction: ["'self'"],
      baseUri: ["'none'"],
      frameAncestors: ["'none'"],
    },
  },
  /** With no referrer at all browsers send no origin with a form, and every form would look foreign. */
  referrerPolicy: { policy: 'same-origin' as const },
  /* It would hold for every other service of this machine too. */
  strictTransportSecurity: false,
  xFrameOptions: { action: 'deny' as const },
};
