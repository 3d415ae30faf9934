/* As much of a service worker's world as is used here; the compiler's own description does not go with the page's. */

export type WorkerScope = {
  readonly registration: { readonly scope: string };
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: LifeEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
};

export type LifeEvent = { readonly waitUntil: (work: Promise<unknown>) => void };

export type FetchEvent = LifeEvent & {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
};
