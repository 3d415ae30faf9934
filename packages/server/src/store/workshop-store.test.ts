import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { nextUuid } from '@brinewright/journal/testing';
import { describe, expect, it } from 'vitest';
import { withCluster } from '../testing/with-cluster.ts';
import { migratePostgres, openPostgres } from './open-postgres.ts';
import { openSqlite } from './open-sqlite.ts';
import type { Chance, SqlStore } from './sql-store.ts';

const rules = (open: (chance: Chance) => Promise<SqlStore>): void => {
  it('is begun once, with its company', async () => {
    const store = await open({ now: () => '2026-11-25T08:00:00.000Z' });
    const company = nextUuid();
    expect(await store.workshop()).toBeUndefined();
    const begun = await store.beginWorkshop(company, 'Ana');
    expect(begun).toEqual({ company, author: 'Ana', begunAt: '2026-11-25T08:00:00.000Z' });
    expect(await store.workshop()).toEqual(begun);
    expect((await store.state(company)).last).toBe(0);
    await expect(store.beginWorkshop(nextUuid(), 'Bea')).rejects.toThrow(RangeError);
    expect(await store.companies()).toEqual([company]);
    await store.close();
  });

  it('knows its devices by the hash of their key until they are turned away', async () => {
    let minute = 0;
    const store = await open({ now: () => `2026-11-25T08:0${minute}:00.000Z` });
    const [company, first, second] = [nextUuid(), nextUuid(), nextUuid()];
    await store.beginWorkshop(company, 'Ana');
    await store.pairDevice({ company, id: first, name: 'van phone', keyHash: 'a'.repeat(64) });
    minute = 1;
    await store.pairDevice({ company, id: second, name: 'tablet', keyHash: 'b'.repeat(64) });
    minute = 2;
    await store.touchDevice(company, first);
    await store.revokeDevice(company, second);
    minute = 3;
    await store.revokeDevice(company, second);
    expect(await store.deviceByKey('a'.repeat(64))).toMatchObject({
      id: first,
      seenAt: '2026-11-25T08:02:00.000Z',
      revokedAt: undefined,
    });
    expect(await store.deviceByKey('b'.repeat(64))).toBeUndefined();
    expect(await store.deviceByKey('c'.repeat(64))).toBeUndefined();
    expect((await store.devices(company)).map(({ name, revokedAt }) => [name, revokedAt])).toEqual([
      ['van phone', undefined],
      ['tablet', '2026-11-25T08:02:00.000Z'],
    ]);
    expect(await store.devices(nextUuid())).toEqual([]);
    await store.close();
  });
};

describe('the workshop beside the journal on SQLite', () => {
  rules(async (chance) => {
    const folder = mkdtempSync(join(tmpdir(), 'bw-workshop-'));
    const store = await openSqlite(join(folder, 'workshop.sqlite'), chance);
    rmSync(folder, { recursive: true });
    return store;
  });
});

withCluster('the workshop beside the journal on PostgreSQL', (cluster) => {
  let drawn = 0;
  rules(async (chance) => {
    drawn += 1;
    const name = `workshop${drawn}`;
    cluster().createDatabase(name);
    await migratePostgres(cluster().url('owner', name), 'app');
    return openPostgres(cluster().url('app', name), chance);
  });
});
