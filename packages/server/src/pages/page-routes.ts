import type { FastifyPluginAsyncZod } from 'fastify-type-provider-zod';
import type { House, Side } from '../http/house.ts';
import { askedLanguage, askedSystem, languageCookie, systemCookie } from '../http/reader.ts';
import { fontBytes, fontUriOf } from './font.ts';
import { lookCss } from './look.ts';
import { ownerRoutes } from './owner-routes.ts';
import { workshopPages } from './workshop-routes.ts';

const year = 31_536_000;
const cookie = { path: '/', httpOnly: true, sameSite: 'lax', maxAge: year } as const;
const forEver = `public, max-age=${year}, immutable`;

/** Everything that people look at. */
export const pageRoutes: FastifyPluginAsyncZod<{ readonly house: House; readonly side: Side }> = async (
  app,
  { house, side },
) => {
  const font = await fontBytes();
  const open = { config: { isOpen: true }, schema: { hide: true } };
  app.get('/look.css', open, async (_, reply) =>
    reply.headers({ 'content-type': 'text/css; charset=utf-8', 'cache-control': forEver }).send(lookCss),
  );
  app.get('/font.woff2', open, async (_, reply) =>
    font === undefined
      ? reply.code(404).send()
      : reply.headers({ 'content-type': 'font/woff2', 'cache-control': forEver }).send(font),
  );
  await app.register(async (pages) => {
    pages.addHook('onRoute', (route) => {
      route.config = { ...route.config, isPage: true };
      route.schema = { ...route.schema, hide: true };
    });
    /* A language or system of units that was asked for by a link stays chosen. */
    pages.addHook('onRequest', async (request, reply) => {
      const [language, system] = [askedLanguage(request), askedSystem(request)];
      if (language !== undefined) reply.setCookie(languageCookie, language, cookie);
      if (system !== undefined) reply.setCookie(systemCookie, system, cookie);
      reply.header('cache-control', 'no-store');
    });
    const fontUri = fontUriOf(font);
    await pages.register(ownerRoutes, { house, side });
    await pages.register(workshopPages, { prefix: '/own', house, side, name: 'own', fontUri });
    if (side === 'loopback')
      await pages.register(workshopPages, { prefix: '/demo', house, side, name: 'demo', fontUri });
  });
};
