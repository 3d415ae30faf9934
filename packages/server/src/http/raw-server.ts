import { createServer, type RequestListener, type Server } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { Times } from './limits.ts';

export type Tls = { readonly key: string; readonly cert: string };

/** A server that cuts off whoever is too slow, over TLS where there is a certificate. */
export const rawServer = (times: Times, tls: Tls | undefined, handler: RequestListener): Server => {
  const limits = {
    requestTimeout: times.request,
    headersTimeout: times.headers,
    keepAliveTimeout: times.keepAlive,
    connectionsCheckingInterval: times.check,
  };
  const server =
    tls === undefined
      ? createServer(limits, handler)
      : createSecureServer({ ...limits, ...tls, minVersion: 'TLSv1.2' }, handler);
  server.setTimeout(times.idle);
  return server;
};
