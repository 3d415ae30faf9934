import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { seal, tombstone } from '@brinewright/journal';
import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { withCluster } from '../../../testing/with-cluster.ts';
import { knownMigrations } from '../../migrator.ts';
import { openPostgres } from '../../open-postgres.ts';
import { openSqlite } from '../../open-sqlite.ts';
import type { SqlStore } from '../../sql-store.ts';
import { company, early, later, missing, redaction, secret, told } from './sample-record.ts';

const samplesOf = (flavour: string): readonly string[] =>
  readdirSync(import.meta.dirname)
    .filter((name) => name.endsWith(`.${flavour}.sql`))
    .toSorted();

const textOf = (name: string): string => readFileSync(join(import.meta.dirname, name), 'utf8');

it('there is a sample of every version of the tables, for both databases', () => {
  const numbers = knownMigrations.map((name) => name.slice(0, 3));
  for (const flavour of ['sqlite', 'postgres'])
    expect(samplesOf(flavour)).toEqual(numbers.map((number) => `${number}.${flavour}.sql`));
});

const expectAllThere = async (store: SqlStore): Promise<void> => {
  const { entries, last } = await store.pull(company, { all: 0 }, 10);
  expect(last).toBe(5);
  const gone = seal(tombstone(secret.entry, redaction.entry.id)).text;
  expect(entries.map(({ text }) => text)).toEqual([told.text, gone, redaction.text, later.text, early.text]);
  expect(entries.map(({ hash }) => hash)).toEqual(
    [told, secret, redaction, later, early].map(({ hash }) => hash),
  );
  expect(await store.workshop()).toMatchObject({ company, author: 'Ana' });
  expect((await store.devices(company)).map(({ name }) => name)).toEqual(['van phone', 'lost phone']);
  expect(await store.deviceByKey('a1'.repeat(32))).toMatchObject({ name: 'van phone' });
  expect(await store.deviceByKey('b2'.repeat(32))).toBeUndefined();
  await expectWaitingKept(store);
};

/** The entry that was redacted before it came is a tombstone when it comes. */
const expectWaitingKept = async (store: SqlStore): Promise<void> => {
  const received = '2026-11-26T09:00:00.000Z';
  await store.push({ company, pusher: 'phone', isOwner: false, received, entries: [missing] });
  const came = await store.find(company, missing.entry.id);
  expect(came?.text).toBe(seal(tombstone(missing.entry, early.entry.id)).text);
};

describe('a record of an older version is brought up to date and read on SQLite', () => {
  it.each(samplesOf('sqlite'))('%s', async (name) => {
    const folder = mkdtempSync(join(tmpdir(), 'bw-sample-'));
    const path = join(folder, 'workshop.sqlite');
    const database = new DatabaseSync(path);
    database.exec(textOf(name));
    database.close();
    const store = await openSqlite(path);
    await expectAllThere(store);
    await store.close();
    rmSync(folder, { recursive: true });
  });
});

withCluster('a record of an older version is brought up to date and read on PostgreSQL', (cluster) => {
  it.each(samplesOf('postgres'))('%s', async (name) => {
    const database = name.replaceAll('.', '-');
    cluster().createDatabase(database);
    const client = new pg.Client(cluster().url('owner', database));
    await client.connect();
    await client.query(textOf(name));
    await client.end();
    const store = await openPostgres(cluster().url('owner', database));
    await expectAllThere(store);
    await store.close();
  });
});
