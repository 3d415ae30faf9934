import { createHash } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Kysely } from 'kysely';
import { type FileStore, openFiles } from '../../files/file-store.ts';
import { syncFile, syncFolder } from '../durable.ts';
import { isNewest, migrationsDone } from '../migrator.ts';
import { NodeSqliteDialect } from '../node-sqlite-dialect.ts';
import { connectPostgres } from '../open-postgres.ts';
import { assertWhole, makeEmpty } from '../open-sqlite.ts';
import { inSnapshot } from '../pull.ts';
import type { Database } from '../schema.ts';
import { asFault, StoreFault, withoutPassword } from '../store-fault.ts';
import { begunWorkshop } from '../workshop-store.ts';
import { copyRows, logOf } from './copy-rows.ts';
import { backupFormat, makeBackupTables, sealBackup } from './format.ts';
import type { Place } from './place.ts';

export type BackedUp = {
  readonly path: string;
  readonly company: string;
  readonly entries: number;
  readonly files: number;
  /** Files that are not what their names say, and were left out. */
  readonly spoiled: readonly string[];
};

export type BackupOptions = {
  readonly place: Place;
  /** The file to write; one that is there is never written over. */
  readonly to: string;
  /** ISO, of the server's clock. */
  readonly now: string;
  /** Unless told, the company whose workshop lies there. */
  readonly company?: string;
};

/**
 * The whole record of a company in one file, as it stood at one moment, also while a server writes.
 * @throws StoreFault 'exists', 'nothing-here', 'wrecked', 'no-database', 'not-migrated', 'store-away', 'full'
 */
export const backup = async ({ place, to, now, company }: BackupOptions): Promise<BackedUp> => {
  const where = place.kind === 'sqlite' ? place.path : withoutPassword(place.url);
  try {
    const source = openSource(place);
    try {
      const flavour = place.kind;
      const done = await migrationsDone(source, flavour);
      if (done === undefined) throw new StoreFault('not-ours', where);
      if (!isNewest(done, where)) throw new StoreFault('not-migrated', where);
      const files = await openFiles(place.files, { tidy: false });
      return await inSnapshot(source, async (tx) => {
        const of = company ?? (await begunWorkshop(tx))?.company;
        if (of === undefined) throw new StoreFault('nothing-here', where);
        return writeBackup({ from: tx, files, company: of, to, now });
      });
    } finally {
      await source.destroy();
    }
  } catch (error) {
    throw asFault(error, where);
  }
};

/** A connection of its own that cannot write. */
const openSource = (place: Place): Kysely<Database> => {
  if (place.kind === 'postgres') return connectPostgres(place.url);
  if (!existsSync(place.path)) throw new StoreFault('nothing-here', place.path);
  assertWhole(place.path);
  const database = new DatabaseSync(place.path, { readOnly: true, timeout: 5000 });
  return new Kysely<Database>({ dialect: new NodeSqliteDialect(database) });
};

export type BackupParts = {
  /** A transaction in which the company's rows do not change. */
  readonly from: Kysely<Database>;
  readonly files: FileStore;
  readonly company: string;
  readonly to: string;
  readonly now: string;
};

/** Written beside its place and moved there whole. */
export const writeBackup = async (parts: BackupParts): Promise<BackedUp> => {
  const path = resolve(parts.to);
  if (existsSync(path)) throw new StoreFault('exists', path);
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  const made = `${path}.part`;
  rmSync(made, { force: true });
  try {
    await makeEmpty(made, path);
    const filled = await fill(made, parts);
    chmodSync(made, 0o600);
    syncFile(made);
    if (existsSync(path)) throw new StoreFault('exists', path);
    renameSync(made, path);
    syncFolder(dirname(path));
    return { path, company: parts.company, ...filled };
  } catch (error) {
    rmSync(made, { force: true });
    throw asFault(error, path);
  }
};

const fill = async (made: string, { from, files, company, now }: BackupParts) => {
  const database = new DatabaseSync(made);
  const to = new Kysely<Database>({ dialect: new NodeSqliteDialect(database) });
  try {
    database.exec('pragma journal_mode = off; pragma synchronous = off');
    makeBackupTables(database);
    const log = await logOf(from, company);
    if (log === undefined) throw new StoreFault('nothing-here', made);
    await to.insertInto('company_log').values(log).execute();
    const entries = await copyRows(from, to, company);
    const { kept, spoiled } = await copyFiles(files, company, database);
    database.prepare('insert into backup_info values (?, ?, ?)').run(backupFormat, company, now);
    sealBackup(database);
    return { entries, files: kept, spoiled };
  } finally {
    database.close();
  }
};

const copyFiles = async (files: FileStore, company: string, database: DatabaseSync) => {
  const insert = database.prepare('insert into file_content values (?, ?)');
  const spoiled: string[] = [];
  let kept = 0;
  for (const hash of await files.list(company)) {
    const content = await contentOf(files, company, hash);
    if (content === undefined) continue;
    if (createHash('sha256').update(content).digest('hex') === hash) {
      insert.run(hash, content);
      kept += 1;
    } else spoiled.push(hash);
  }
  return { kept, spoiled };
};

const contentOf = async (files: FileStore, company: string, hash: string): Promise<Buffer | undefined> => {
  const file = await files.open(company, hash);
  if (file === undefined) return undefined;
  const parts: Uint8Array[] = [];
  for await (const part of file.bytes) parts.push(part);
  return Buffer.concat(parts);
};
