import { type Dialect, Kysely, PostgresDialect, sql } from 'kysely';
import pg from 'pg';
import { isNewest, migrate, migrationsDone } from './migrator.ts';
import { pushInOne } from './push-in-one.ts';
import type { Database } from './schema.ts';
import { type Chance, SqlStore } from './sql-store.ts';
import { asFault, StoreFault, withoutPassword } from './store-fault.ts';

export type PostgresOptions = Chance & {
  /** Wraps the way to the database, so that trials can let the n-th query fail. */
  readonly around?: (dialect: Dialect) => Dialect;
  /** Connections at most. */
  readonly connections?: number;
};

export type PostgresStore = SqlStore;

/**
 * The record in a PostgreSQL database. Missing tables are made where the role may make them; otherwise the owner
 * has to run `migratePostgres` first. It goes on by itself when the database was away and has come back.
 * @throws StoreFault 'store-away', 'newer', 'not-migrated', 'not-allowed'
 */
export const openPostgres = async (url: string, options: PostgresOptions = {}): Promise<PostgresStore> => {
  const { around, connections, ...chance } = options;
  const where = withoutPassword(url);
  const dialect = new PostgresDialect({ pool: poolOf(url, connections ?? 10) });
  const db = new Kysely<Database>({ dialect: around?.(dialect) ?? dialect });
  const store = new SqlStore({ ...chance, db, quickly: pushInOne, where });
  try {
    await assertMigrated(db, where);
    return store;
  } catch (error) {
    await store.close();
    throw asFault(error, where);
  }
};

const assertMigrated = async (db: Kysely<Database>, where: string): Promise<void> => {
  if (isNewest((await migrationsDone(db, 'postgres')) ?? [], where)) return;
  try {
    await migrate(db, 'postgres', where);
  } catch (error) {
    const fault = asFault(error, where);
    const isOurRight = !(fault instanceof StoreFault && fault.code === 'not-allowed');
    throw isOurRight ? fault : new StoreFault('not-migrated', where, error);
  }
};

/** Makes or changes the tables as their owner, and lets another role do what a server must, and no more. */
export const migratePostgres = async (ownerUrl: string, role?: string): Promise<void> => {
  const where = withoutPassword(ownerUrl);
  const db = connectPostgres(ownerUrl);
  try {
    await migrate(db, 'postgres', where);
    if (role !== undefined) await grantTo(db, role);
  } catch (error) {
    throw asFault(error, where);
  } finally {
    await db.destroy();
  }
};

/** Entries are added; of one that is there only the body changes, to a tombstone; nothing is deleted. */
const grantTo = async (db: Kysely<Database>, role: string): Promise<void> => {
  const to = sql.id(role);
  await sql`grant select, insert on entry, company_log, own_device, paired_device, workshop to ${to}`.execute(
    db,
  );
  await sql`grant update (body) on entry to ${to}`.execute(db);
  await sql`grant update (last, lamport, waiting) on company_log to ${to}`.execute(db);
  await sql`grant update (seen_at, revoked_at) on paired_device to ${to}`.execute(db);
  await sql`grant select on kysely_migration to ${to}`.execute(db);
};

/** One connection, without any look at the tables, for work that takes as long as it takes. */
export const connectPostgres = (url: string): Kysely<Database> =>
  new Kysely<Database>({ dialect: new PostgresDialect({ pool: poolOf(url, 1, 'patient') }) });

/** Places and counts lie far below 2^53, so they come as numbers. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') =>
    oid === pg.types.builtins.INT8 ? Number : pg.types.getTypeParser(oid, format),
};

const poolOf = (url: string, max: number, patience: 'patient' | 'brisk' = 'brisk'): pg.Pool => {
  const pool = new pg.Pool({
    connectionString: url,
    max,
    types,
    application_name: 'brinewright',
    connectionTimeoutMillis: 5_000,
    statement_timeout: patience === 'brisk' ? 30_000 : 0,
    idle_in_transaction_session_timeout: patience === 'brisk' ? 60_000 : 0,
    options: '-c synchronous_commit=on',
  });
  pool.on('error', toldElsewhere);
  pool.on('connect', (client) => client.on('error', toldElsewhere));
  return pool;
};

/**
 * A connection broke: an idle one the pool has dropped already, one at work fails its query. Without a listener either
 * would end the process.
 */
const toldElsewhere = (): void => {};
