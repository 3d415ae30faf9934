import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { aHand, anEntry, aRedaction, batchOf, entriesOf, nextUuid } from '@brinewright/journal/testing';
import { afterEach, beforeEach } from 'vitest';
import { openFiles } from '../files/file-store.ts';
import type { Place } from '../store/backup/place.ts';
import { type Restored, restore } from '../store/backup/restore.ts';
import { openPostgres } from '../store/open-postgres.ts';
import { openSqlite } from '../store/open-sqlite.ts';
import type { SqlStore } from '../store/sql-store.ts';
import { StoreFault } from '../store/store-fault.ts';

export const now = '2026-11-25T14:03:02.000Z';

export type SqlitePlace = Extract<Place, { readonly kind: 'sqlite' }>;
export type PostgresPlace = Extract<Place, { readonly kind: 'postgres' }>;

/** A folder of its own for each test, and what is done in it. */
export const trialFolder = () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'bw-backup-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  const within = (...names: readonly string[]): string => join(folder, ...names);
  const saved = (): string => within('saved.backup');
  const back = (place: Place, from = saved(), at = now): Promise<Restored> =>
    restore({ from, place, now: at, asideFolder: within('aside') });
  const sqlitePlace = (name: string): SqlitePlace => ({
    kind: 'sqlite',
    path: within(name, 'workshop.sqlite'),
    files: within(name, 'files'),
  });
  return { within, saved, back, sqlitePlace };
};

export const openPlace = (place: Place): Promise<SqlStore> =>
  place.kind === 'sqlite' ? openSqlite(place.path) : openPostgres(place.url);

export const codeOf = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'fine',
    (error: unknown) => (error instanceof StoreFault ? error.code : error),
  );

const photo = Buffer.from('a photo of a worn piston');
export const photoHash = createHash('sha256').update(photo).digest('hex');
async function* photoBytes(): AsyncGenerator<Uint8Array> {
  yield photo;
}

/** A workshop with 1,203 entries, one of them redacted, a paired device and a photo; closed. */
export const fillPlace = async (place: Place): Promise<string> => {
  const store = await openPlace(place);
  const hand = aHand();
  const { company } = hand;
  await store.beginWorkshop(company, 'Ana');
  await store.pairDevice({ company, id: nextUuid(), name: 'van phone', keyHash: keyOf(company) });
  const secret = anEntry(hand, 1, { payload: { text: 'gate code 4711' } });
  await store.push(batchOf(company, [secret, aRedaction(hand, 2, secret.entry.id)], { isOwner: true }));
  for (const from of [3, 503, 1003])
    await store.push(batchOf(company, entriesOf(hand, 500, from).slice(0, 1203 - from)));
  await store.write({ company, pusher: 'workshop', received: now }, [company], ({ device, lamport }) => [
    anEntry({ company, stream: company, device }, 1, {
      lamport: lamport + 1,
      payload: { text: '\u0000 🧂 ñ' },
    }),
  ]);
  await store.close();
  const files = await openFiles(place.files);
  await files.receive(company, photoHash, photoBytes());
  return company;
};

/** Without the empty logs that a reader leaves. */
export const mainFiles = (at: string): readonly string[] =>
  readdirSync(at)
    .filter((name) => !/-(?:wal|shm)$/u.test(name))
    .toSorted();

const keyOf = (company: string): string => createHash('sha256').update(company).digest('hex');

export const everything = async (place: Place, company: string) => {
  const store = await openPlace(place);
  const { entries } = await store.pull(company, { all: 0 }, 5000);
  const devices = await store.devices(company);
  const workshop = await store.workshop();
  const { epoch, last } = await store.state(company);
  await store.close();
  const files = await (await openFiles(place.files)).list(company);
  return { record: { entries, devices, workshop, last, files }, epoch };
};

export const ownDeviceOf = async (place: Place, company: string): Promise<string> => {
  const store = await openPlace(place);
  let own = '';
  await store.write({ company, pusher: 'workshop', received: now }, [], ({ device }) => {
    own = device;
    return [];
  });
  await store.close();
  return own;
};
