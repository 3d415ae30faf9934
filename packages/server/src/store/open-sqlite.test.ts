import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { aHand, batchOf, entriesOf, nextUuid } from '@brinewright/journal/testing';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqlite } from './open-sqlite.ts';
import { StoreFault } from './store-fault.ts';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'bw-open-'));
  path = join(folder, 'data', 'workshop.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

const faultOf = async (at = path): Promise<unknown> =>
  openSqlite(at).then(
    (store) => store.close().then(() => 'opened'),
    (error: unknown) => (error instanceof StoreFault ? [error.code, error.where] : error),
  );

/** A record with 50 entries, closed. */
const aRecord = async (): Promise<string> => {
  const store = await openSqlite(path);
  const hand = aHand();
  await store.begin(hand.company);
  await store.push(batchOf(hand.company, entriesOf(hand, 50)));
  await store.close();
  return hand.company;
};

describe('a record in a file', () => {
  it('is made with its folder, for its owner only', async () => {
    const store = await openSqlite(path);
    await store.begin(nextUuid());
    for (const name of readdirSync(join(folder, 'data')))
      expect([name, statSync(join(folder, 'data', name)).mode & 0o777]).toEqual([name, 0o600]);
    expect(statSync(join(folder, 'data')).mode & 0o777).toBe(0o700);
    expect(store.where).toBe(path);
    await store.close();
    await store.close();
    expect(readdirSync(join(folder, 'data')).toSorted()).toEqual(['workshop.sqlite', 'workshop.sqlite.lock']);
  });

  it('writes ahead', async () => {
    const database = new DatabaseSync(await aRecord().then(() => path));
    expect(database.prepare('pragma journal_mode').get()).toEqual({ journal_mode: 'wal' });
    database.close();
  });

  it('has one writer: a second is told which file is taken', async () => {
    const store = await openSqlite(path);
    expect(await faultOf()).toEqual(['locked', path]);
    await store.close();
    expect(await faultOf()).toBe('opened');
  });

  it('has one writer by whatever name it is called', async () => {
    const store = await openSqlite(path);
    const link = join(folder, 'link.sqlite');
    symlinkSync(path, link);
    expect(await faultOf(link)).toEqual(['locked', path]);
    await store.close();
  });

  it('is free again after its writer was killed, with all it had acknowledged', async () => {
    const company = await aRecord();
    const child = spawn(
      process.execPath,
      [
        '--input-type=module',
        '-e',
        `import { openSqlite } from ${JSON.stringify(join(import.meta.dirname, 'open-sqlite.ts'))};
         const store = await openSqlite(${JSON.stringify(path)});
         await store.beginWorkshop(${JSON.stringify(company)}, 'Ana');
         console.log('open'); setInterval(() => store, 1000);`,
      ],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    );
    await once(child.stdout, 'data');
    expect(await faultOf()).toEqual(['locked', path]);
    child.kill('SIGKILL');
    await once(child, 'exit');
    const store = await openSqlite(path);
    expect((await store.pull(company, { all: 0 }, 60)).entries).toHaveLength(50);
    expect((await store.workshop())?.author).toBe('Ana');
    await store.close();
  });
});

describe('never an empty record in place of one that was', () => {
  const spoil: readonly (readonly [string, string, () => void])[] = [
    ['text', 'no-database', () => writeFileSync(path, 'not a database at all\n'.repeat(500))],
    ['nothing', 'wrecked', () => truncateSync(path)],
    ['half of it', 'wrecked', () => truncateSync(path, Math.floor(statSync(path).size / 2 / 4096) * 4096)],
    ['zeros in the middle', 'wrecked', () => zero(4096, 20_000)],
    ['zeros at its head', 'no-database', () => zero(0, 100)],
  ];
  it.each(spoil)('when it is %s: %s', async (_, code, wreck) => {
    await aRecord();
    wreck();
    const before = readFileSync(path);
    expect(await faultOf()).toEqual([code, path]);
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(existsSync(`${path}.new`)).toBe(false);
  });

  it('when the file is gone and its log is still there', async () => {
    await aRecord();
    rmSync(path);
    writeFileSync(`${path}-wal`, 'rest of the log');
    expect(await faultOf()).toEqual(['wrecked', path]);
  });

  it('when the database is of another program', async () => {
    await aRecord();
    rmSync(path);
    const other = new DatabaseSync(path);
    other.exec('create table song (title text)');
    other.close();
    expect(await faultOf()).toEqual(['not-ours', path]);
  });

  it('when it is of a newer version', async () => {
    await aRecord();
    const newer = new DatabaseSync(path);
    newer.exec(`insert into kysely_migration values ('999-later', '2027-01-01T00:00:00.000Z')`);
    newer.close();
    expect(await faultOf()).toEqual(['newer', path]);
  });

  it('after a beginning that was cut short', async () => {
    await aRecord();
    rmSync(path);
    writeFileSync(`${path}.new`, 'half made');
    expect(await faultOf()).toBe('opened');
  });
});

const zero = (from: number, to: number): void => {
  const bytes = readFileSync(path);
  bytes.fill(0, from, to);
  writeFileSync(path, bytes);
};
