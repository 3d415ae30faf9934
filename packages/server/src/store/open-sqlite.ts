import { chmodSync, existsSync, mkdirSync, realpathSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { type Dialect, Kysely } from 'kysely';
import { finishRestore } from './backup/finish-restore.ts';
import { syncFile, syncFolder } from './durable.ts';
import { isNewest, migrate, migrationsDone } from './migrator.ts';
import { NodeSqliteDialect } from './node-sqlite-dialect.ts';
import { pushInTransaction } from './push.ts';
import type { Database } from './schema.ts';
import { type Chance, SqlStore } from './sql-store.ts';
import { lockFile } from './sqlite-lock.ts';
import { asFault, StoreFault } from './store-fault.ts';

export type SqliteOptions = Chance & {
  /** Wraps the way to the database, so that trials can let the n-th query fail. */
  readonly around?: (dialect: Dialect) => Dialect;
};

export type SqliteStore = SqlStore;

/**
 * The record in one file, which is made where there is none. One process at a time may write to it.
 * @throws StoreFault 'locked', 'wrecked', 'no-database', 'not-ours', 'newer', 'not-allowed', 'full'
 */
export const openSqlite = async (given: string, options: SqliteOptions = {}): Promise<SqliteStore> => {
  try {
    const path = realPath(given);
    const release = lockFile(path);
    try {
      return await openLocked(path, release, options);
    } catch (error) {
      release();
      throw error;
    }
  } catch (error) {
    throw asFault(error, given);
  }
};

/** The file behind links, so that two names of one file share one lock; its folder is made, for its owner only. */
export const realPath = (given: string): string => {
  const path = resolve(given);
  if (existsSync(path)) return realpathSync(path);
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  return join(realpathSync(dirname(path)), path.slice(dirname(path).length + 1));
};

const openLocked = async (
  path: string,
  release: () => void,
  { around, ...chance }: SqliteOptions,
): Promise<SqliteStore> => {
  finishRestore(path);
  if (existsSync(path)) assertWhole(path);
  else await create(path);
  const database = openDatabase(path);
  try {
    await bringUpToDate(path, database);
  } catch (error) {
    database.close();
    throw error;
  }
  const dialect = new NodeSqliteDialect(database);
  const db = new Kysely<Database>({ dialect: around?.(dialect) ?? dialect });
  return new SqlStore({
    ...chance,
    db,
    quickly: pushInTransaction,
    where: path,
    afterClose: closing(database, release),
  });
};

/** A Kysely that was never asked anything leaves its database open. */
const closing = (database: DatabaseSync, release: () => void) => () => {
  if (database.isOpen) database.close();
  release();
};

/** SQLite would take an empty file for a new database; to us it is one that was lost. */
export const assertWhole = (path: string): void => {
  if (statSync(path).size === 0) throw new StoreFault('wrecked', path);
  const database = new DatabaseSync(path, { readOnly: true });
  try {
    const [first] = database.prepare('pragma quick_check(1)').all();
    if (first?.quick_check !== 'ok')
      throw new StoreFault('wrecked', path, new Error(String(first?.quick_check)));
  } finally {
    database.close();
  }
};

/** Made beside its place and moved there whole: a record is there with all its tables, or not there. */
const create = async (path: string): Promise<void> => {
  if (isFilled(`${path}-wal`)) throw new StoreFault('wrecked', path);
  const made = `${path}.new`;
  rmSync(made, { force: true });
  rmSync(`${made}-journal`, { force: true });
  await makeEmpty(made, path);
  renameSync(made, path);
  syncFolder(dirname(path));
};

const isFilled = (path: string): boolean => existsSync(path) && statSync(path).size > 0;

/** An empty record without a log beside it. */
export const makeEmpty = async (made: string, where: string): Promise<void> => {
  const database = new DatabaseSync(made);
  chmodSync(made, 0o600);
  const db = new Kysely<Database>({ dialect: new NodeSqliteDialect(database) });
  try {
    await migrate(db, 'sqlite', where);
  } finally {
    await db.destroy();
  }
  syncFile(made);
};

const openDatabase = (path: string): DatabaseSync => {
  const database = new DatabaseSync(path, { timeout: 5000, enableForeignKeyConstraints: true });
  // A statement of many rows keeps what it may have to undo in a file otherwise: a fifth of the time of a push.
  database.exec('pragma journal_mode = wal; pragma synchronous = full; pragma temp_store = memory');
  return database;
};

const bringUpToDate = async (path: string, database: DatabaseSync): Promise<void> => {
  const db = new Kysely<Database>({ dialect: new NodeSqliteDialect(database) });
  const done = await migrationsDone(db, 'sqlite');
  if (done === undefined) throw new StoreFault('not-ours', path);
  if (!isNewest(done, path)) await migrate(db, 'sqlite', path);
};
