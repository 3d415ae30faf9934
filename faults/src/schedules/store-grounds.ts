import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  backup,
  migratePostgres,
  openPostgres,
  openSqlite,
  type Place,
  restore,
  type SqlStore,
} from '@brinewright/server/store';
import { startCluster } from '@brinewright/server/testing';
import type { TrialGround, TrialServer, TrialServerOptions } from './trial-server.ts';

/* The stores that a workshop has, with their own backup and restore. */

/** A file of its own for each schedule, in memory where the machine has room for that: nothing is killed here. */
export const sqliteGround = async (): Promise<TrialGround> => {
  const shared = '/dev/shm';
  const folder = mkdtempSync(join(existsSync(shared) ? shared : tmpdir(), 'bw-schedules-'));
  let count = 0;
  return {
    name: 'sqlite',
    newServer: (options) => {
      count += 1;
      const own = join(folder, String(count));
      const place: Place = { kind: 'sqlite', path: join(own, 'workshop.sqlite'), files: join(own, 'files') };
      const open = (): Promise<SqlStore> => openSqlite(place.path, { draw: options.draw });
      return StoreServer.begin({ ...options, folder: own, place, open });
    },
    close: async () => rmSync(folder, { recursive: true, force: true }),
  };
};

/** A database for each schedule: one that is cut down runs again, with the same company. */
export const postgresGround = async (): Promise<TrialGround> => {
  const cluster = await startCluster({ fsync: false });
  const folder = mkdtempSync(join(tmpdir(), 'bw-schedules-'));
  let count = 0;
  return {
    name: 'postgres',
    newServer: async (options) => {
      count += 1;
      const own = join(folder, String(count));
      const database = `schedule-${count}`;
      cluster.createDatabase(database);
      const url = cluster.url('owner', database);
      await migratePostgres(url, 'app');
      const owner: Place = { kind: 'postgres', url, files: join(own, 'files') };
      const open = (): Promise<SqlStore> =>
        openPostgres(cluster.url('app', database), { draw: options.draw, connections: 2 });
      return StoreServer.begin({ ...options, folder: own, place: owner, open });
    },
    close: async () => {
      cluster.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

type Parts = TrialServerOptions & {
  readonly folder: string;
  readonly place: Place;
  readonly open: () => Promise<SqlStore>;
};

class StoreServer implements TrialServer {
  readonly company: string;
  readonly #parts: Parts;
  readonly #backups: string[] = [];
  #store: SqlStore;
  #restores = 0;

  static async begin(parts: Parts): Promise<StoreServer> {
    const store = await parts.open();
    await store.begin(parts.company);
    return new StoreServer(parts, store);
  }

  private constructor(parts: Parts, store: SqlStore) {
    this.company = parts.company;
    this.#parts = parts;
    this.#store = store;
  }

  get store(): SqlStore {
    return this.#store;
  }

  async restart(): Promise<void> {
    await this.#store.close();
    this.#store = await this.#parts.open();
  }

  async backup(): Promise<void> {
    const to = join(this.#parts.folder, `backup-${this.#backups.length}`);
    await backup({ place: this.#parts.place, to, now: this.#now(), company: this.company });
    this.#backups.push(to);
  }

  async restoreOldest(): Promise<boolean> {
    const [from] = this.#backups;
    if (from === undefined) return false;
    await this.#store.close();
    this.#restores += 1;
    const { folder, place, draw } = this.#parts;
    await restore({ from, place, now: this.#now(), asideFolder: join(folder, 'aside'), draw });
    this.#store = await this.#parts.open();
    return true;
  }

  async close(): Promise<void> {
    await this.#store.close();
    rmSync(this.#parts.folder, { recursive: true, force: true });
  }

  #now(): string {
    return new Date(Date.UTC(2026, 10, 25, 12, 0, this.#restores)).toISOString();
  }
}
