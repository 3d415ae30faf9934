import type { FetchEvent, WorkerScope } from './scope.ts';

/*
 * Keeps the app itself on the device. All its files are fetched when it is installed; a page is answered from them
 * without the network. A newer version waits until the start place asks for it. What goes to the API is left alone.
 */

declare const self: WorkerScope;

type List = { readonly version: string; readonly files: readonly string[] };

/** Filled in by the build. */
const list: List = JSON.parse('__PRECACHE__');

const scope = self.registration.scope;
const family = `shell ${scope} `;
const name = `${family}${list.version}`;
const page = new URL('index.html', scope).href;

self.addEventListener('install', (event) => event.waitUntil(fetchAll()));

self.addEventListener('activate', (event) => event.waitUntil(clearOthers().then(() => self.clients.claim())));

self.addEventListener('message', ({ data }) => {
  if (data === 'change-now') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope)) return;
  event.respondWith(request.mode === 'navigate' ? thePage(event) : aFile(request));
});

/** Past the browser's own cache, so that files of one version belong together. */
const fetchAll = async (): Promise<void> => {
  const cache = await caches.open(name);
  await cache.addAll(list.files.map((file) => new Request(new URL(file, scope), { cache: 'reload' })));
};

const clearOthers = async (): Promise<void> => {
  const names = await caches.keys();
  const old = names.filter((one) => one.startsWith(family) && one !== name);
  await Promise.all(old.map((one) => caches.delete(one)));
};

/** The page with its base in full, so that a deep address finds its files. */
const thePage = async ({ request }: FetchEvent): Promise<Response> => {
  const kept = await caches.match(page, { cacheName: name });
  if (kept === undefined) return fetch(request);
  const html = (await kept.text()).replace(/<base href="[^"]*"/u, `<base href="${new URL(scope).pathname}"`);
  const headers = new Headers(kept.headers);
  headers.delete('content-length');
  headers.delete('content-encoding');
  return new Response(html, { status: 200, headers });
};

const aFile = async (request: Request): Promise<Response> =>
  (await caches.match(request, { cacheName: name })) ?? fetch(request);
