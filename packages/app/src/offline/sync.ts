import type { AppDatabase } from './database.ts';
import type { Place } from './place.ts';
import type { FromSync, SyncStatus, ToSync } from './sync-protocol.ts';

/** The way to the server: runs by itself in a worker, in one tab of several; nothing waits for it. */
export type Sync = {
  /** Something was written: go now. */
  readonly nudge: () => void;
  readonly status: () => SyncStatus;
  readonly listen: (changed: () => void) => () => void;
};

export const startSync = (options: {
  readonly database: AppDatabase;
  readonly place: Place;
  readonly company: string;
}): Sync => {
  const { place, company, database } = options;
  const worker = new Worker(new URL('./sync-worker.ts', import.meta.url), { type: 'module' });
  const post = (message: ToSync): void => worker.postMessage(message);
  const listeners = new Set<() => void>();
  let status: SyncStatus = { state: 'begun', since: undefined };
  worker.addEventListener('message', ({ data }: MessageEvent) => {
    const told: FromSync = data;
    status = told.status;
    for (const listener of listeners) listener();
  });
  post({ type: 'open', database: database.name, api: new URL(place.api, location.href).href, company });
  const nudge = (): void => post({ type: 'nudge' });
  addEventListener('online', nudge);
  return {
    nudge,
    status: () => status,
    listen: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
};
