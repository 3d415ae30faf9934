import { type Driver, driveSync, followAll, httpTransport, type Transport } from '@brinewright/journal';
import { v7 } from 'uuid';
import { type AppDatabase, openDatabase } from './database.ts';
import { dexieStore } from './dexie-store.ts';
import { fetchDefinitions } from './fetch-definitions.ts';
import { sendFiles } from './send-files.ts';
import type { FromSync, SyncStatus, ToSync } from './sync-protocol.ts';

/*
 * Meets the server: entries first, then photos, then what definitions are missing here. Of several tabs one does it;
 * the others wait for the lock and pass their nudges on.
 */

let status: SyncStatus = { state: 'begun', since: undefined };
let driver: Driver | undefined;
let channel: BroadcastChannel | undefined;

addEventListener('message', ({ data }: MessageEvent) => {
  const message: ToSync = data;
  if (message.type === 'open') void open(message);
  else {
    driver?.nudge();
    channel?.postMessage('nudge');
  }
});

const open = async ({
  database,
  api,
  company,
}: Extract<ToSync, { readonly type: 'open' }>): Promise<void> => {
  const shared = new BroadcastChannel(`${database}-sync`);
  channel = shared;
  shared.addEventListener('message', ({ data }) => {
    if (data === 'nudge') driver?.nudge();
    else tell(data);
  });
  await navigator.locks.request(`${database}-sync`, () => drive(openDatabase(database), api, company));
};

const drive = async (database: AppDatabase, api: string, company: string): Promise<void> => {
  const store = dexieStore(database);
  const transport = httpTransport({
    api,
    fetch: (address, request) => fetch(address, { ...request, signal: AbortSignal.timeout(30_000) }),
  });
  await store.transact(followAll);
  driver = driveSync(store, transport, {
    now: () => Date.now(),
    newId: () => v7(),
    chance: () => Math.random(),
    sleep: napFor,
    tell: ({ state }) => {
      tell({ state, since: state === 'done' ? undefined : (status.since ?? Date.now()) });
      channel?.postMessage(status);
      if (state === 'done') void carryFiles(database, transport, company);
    },
  });
  const news = new EventSource(`${api}/sync/events`);
  news.addEventListener('message', () => driver?.nudge());
  await driver.ended;
  news.close();
};

/** One after the other, so that a slow way is never asked for two at once. */
let carrying: Promise<void> = Promise.resolve();

const carryFiles = (database: AppDatabase, transport: Transport, company: string): Promise<void> => {
  carrying = carrying.then(async () => {
    await sendFiles(database, transport);
    await fetchDefinitions(database, transport, company);
  });
  return carrying;
};

const tell = (now: SyncStatus): void => {
  status = now;
  const message: FromSync = { status };
  postMessage(message);
};

const napFor = (milliseconds: number) => {
  let cancel = (): void => undefined;
  const over = new Promise<void>((resolve) => {
    const timer = setTimeout(resolve, milliseconds);
    cancel = () => {
      clearTimeout(timer);
      resolve();
    };
  });
  return { over, cancel: () => cancel() };
};
