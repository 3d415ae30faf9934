import type { FastifyInstance } from 'fastify';

export type RouteBook = { readonly methodsAt: (url: string) => readonly string[] };

/** Which methods an address would have answered to, so that a wrong one is told from a wrong address. */
export const routeBook = (app: FastifyInstance): RouteBook => {
  const routes = new Map<string, { readonly pattern: RegExp; readonly methods: Set<string> }>();
  app.addHook('onRoute', ({ url, method }) => {
    const known = routes.get(url) ?? { pattern: patternOf(url), methods: new Set<string>() };
    for (const one of [method].flat()) known.methods.add(one);
    routes.set(url, known);
  });
  return {
    methodsAt: (url) => {
      const path = url.split('?')[0] ?? '';
      const found = [...routes.values()].filter(({ pattern }) => pattern.test(path));
      return [...new Set(found.flatMap(({ methods }) => [...methods]))].toSorted();
    },
  };
};

const patternOf = (url: string): RegExp =>
  new RegExp(`^${url.replaceAll(/[.*+?^${}()|[\]\\]/gu, '\\$&').replaceAll(/:\w+/gu, '[^/]+')}$`, 'u');
