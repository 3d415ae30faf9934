import { Dexie } from 'dexie';
import { useSyncExternalStore } from 'react';

/** Counts what was changed in the database, by this tab, another one or a worker. */
let count = 0;
const listeners = new Set<() => void>();
let isTelling = false;

const told = /\/(?:entries|definitions|streams|files|device)\//u;

Dexie.on('storagemutated', (parts) => {
  if (isTelling || !Object.keys(parts).some((part) => told.test(part))) return;
  isTelling = true;
  setTimeout(() => {
    isTelling = false;
    count += 1;
    for (const listener of listeners) listener();
  }, 0);
});

const listen = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** A number that grows whenever entries or definitions on this device have changed. */
export const useChanges = (): number => useSyncExternalStore(listen, () => count);
