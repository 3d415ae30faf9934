import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { storeSuite } from '@brinewright/journal/testing';
import { beforeAll } from 'vitest';
import { withCluster } from '../testing/with-cluster.ts';
import { migratePostgres, openPostgres } from './open-postgres.ts';
import { openSqlite } from './open-sqlite.ts';
import type { SqlStore } from './sql-store.ts';

const openedBy = async (open: () => Promise<SqlStore>, clean: () => void = () => {}) => {
  const first = await open();
  const stores = [first];
  return {
    store: first,
    reopen: async () => {
      await stores.at(-1)?.close();
      const next = await open();
      stores.push(next);
      return next;
    },
    close: async () => {
      for (const store of stores) await store.close();
      clean();
    },
  };
};

storeSuite('SQLite', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bw-store-'));
  const clean = () => rmSync(folder, { recursive: true });
  return openedBy(() => openSqlite(join(folder, 'workshop.sqlite')), clean);
});

withCluster('on PostgreSQL', (cluster) => {
  beforeAll(() => migratePostgres(cluster().url('owner'), 'app'));
  storeSuite('PostgreSQL', () => openedBy(() => openPostgres(cluster().url('app'))));
});
