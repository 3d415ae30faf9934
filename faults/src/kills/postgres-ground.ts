import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { migratePostgres } from '@brinewright/server/store';
import { startCluster } from '@brinewright/server/testing';
import type { Ground } from './ground.ts';
import { companyAt } from './http-way.ts';
import { ServerProcess, serving } from './server-process.ts';

/** A cluster of its own that syncs to disk; the server logs in as a role that owns nothing. */
export const postgresGround = async (): Promise<Ground> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-kills-'));
  const cluster = await startCluster({ fsync: true });
  await migratePostgres(cluster.url('owner'), 'app');
  return {
    store: 'postgres',
    spawn: () =>
      ServerProcess.spawn(serving(join(folder, 'workshop.sqlite')), { DATABASE_URL: cluster.url('app') }),
    companyAt,
    database: { kill: cluster.kill, start: async () => cluster.startAgain() },
    close: async () => {
      cluster.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};
