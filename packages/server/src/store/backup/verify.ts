import { existsSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { isTombstone, sha256Hex } from '@brinewright/journal';
import { knownMigrations } from '../migrator.ts';
import { entryOf } from '../rows.ts';
import { asFault, StoreFault } from '../store-fault.ts';
import { backupFormat, partNames, sumPart } from './format.ts';

/** What is wrong with a backup, each by itself. */
export type BackupFault =
  | { readonly kind: 'missing' }
  /** The file cannot be read as a database, or not all of it. */
  | { readonly kind: 'damaged'; readonly detail: string }
  | { readonly kind: 'not-a-backup' }
  | { readonly kind: 'newer'; readonly detail: string }
  /** Rows of a table are not those that were written. */
  | { readonly kind: 'rows'; readonly table: string }
  /** An entry is not what its hash says, or its row not what the entry says. */
  | { readonly kind: 'entry'; readonly position: number; readonly id: string }
  /** There is no entry at this place of the log. */
  | { readonly kind: 'place'; readonly position: number }
  | { readonly kind: 'file'; readonly hash: string };

export type Verified = {
  readonly faults: readonly BackupFault[];
  readonly company: string;
  readonly madeAt: string;
  readonly entries: number;
  readonly files: number;
};

/** Reads all of a backup and holds it against its sums; every fault is named. */
export const verifyBackup = (path: string): Verified => {
  if (!existsSync(path)) return nothing({ kind: 'missing' });
  const faults: BackupFault[] = [];
  const database = new DatabaseSync(path, { readOnly: true });
  try {
    const info = infoOf(database);
    if ('kind' in info) return nothing(info);
    for (const check of checks) faults.push(...readable(() => check(database)));
    return { ...info, faults };
  } catch (error) {
    return nothing(damage(error));
  } finally {
    database.close();
  }
};

const nothing = (fault: BackupFault): Verified => ({
  faults: [fault],
  company: '',
  madeAt: '',
  entries: 0,
  files: 0,
});

/** A page that cannot be read ends one check and not the others. */
const readable = (check: () => readonly BackupFault[]): readonly BackupFault[] => {
  try {
    return check();
  } catch (error) {
    return [damage(error)];
  }
};

const damage = (error: unknown): BackupFault => {
  const fault = asFault(error, '');
  const isOfTheFile = fault instanceof StoreFault || error instanceof SyntaxError;
  if (!isOfTheFile && !isSqlite(error)) throw error;
  return { kind: 'damaged', detail: error instanceof Error ? error.message : String(error) };
};

const isSqlite = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ERR_SQLITE_ERROR';

const infoOf = (database: DatabaseSync): Omit<Verified, 'faults'> | BackupFault => {
  const tables = database.prepare(`select name from sqlite_master where name like 'backup_%'`).all();
  if (tables.length === 0) return { kind: 'not-a-backup' };
  const info = database.prepare('select format, company, made_at from backup_info').get();
  if (info === undefined) return { kind: 'not-a-backup' };
  const newer = newerThanKnown(database, Number(info.format));
  if (newer !== undefined) return { kind: 'newer', detail: newer };
  return {
    company: String(info.company),
    madeAt: String(info.made_at),
    entries: countOf(database, 'entry'),
    files: countOf(database, 'file_content'),
  };
};

const newerThanKnown = (database: DatabaseSync, format: number): string | undefined => {
  if (format > backupFormat) return `${format}`;
  const done = database.prepare('select name from kysely_migration').all();
  return done.map(({ name }) => String(name)).find((name) => !knownMigrations.includes(name));
};

const countOf = (database: DatabaseSync, table: string): number =>
  Number(database.prepare(`select count(*) as count from ${table}`).get()?.count);

const wholeFile = (database: DatabaseSync): readonly BackupFault[] =>
  database
    .prepare('pragma integrity_check(20)')
    .all()
    .map((row) => String(row.integrity_check))
    .filter((said) => said !== 'ok')
    .map((detail) => ({ kind: 'damaged', detail }));

const sameRows = (database: DatabaseSync): readonly BackupFault[] => {
  const sums = new Map(
    database
      .prepare('select name, row_count, digest from backup_part')
      .all()
      .map(({ name, row_count, digest }) => [String(name), `${row_count} ${digest}`]),
  );
  return partNames.flatMap((table) =>
    readable(() => {
      const { rows, digest } = sumPart(database, table);
      return sums.get(table) === `${rows} ${digest}` ? [] : [{ kind: 'rows', table }];
    }),
  );
};

const soundEntries = (database: DatabaseSync): readonly BackupFault[] => {
  const faults: BackupFault[] = [];
  let next = 1;
  for (const row of database.prepare('select * from entry order by position').iterate()) {
    const position = Number(row.position);
    for (; next < position && faults.length < mostNamed; next += 1)
      faults.push({ kind: 'place', position: next });
    next = position + 1;
    if (!isSound(row)) faults.push({ kind: 'entry', position, id: String(row.id) });
  }
  const last = Number(database.prepare('select last from company_log').get()?.last);
  return last === next - 1 ? faults : [...faults, { kind: 'place', position: next }];
};

/** Beyond so many gaps the rest is not named. */
const mostNamed = 1000;

const isSound = (row: Readonly<Record<string, unknown>>): boolean => {
  const body = String(row.body);
  try {
    const entry = entryOf(body);
    const isSame = (['id', 'company', 'stream', 'device', 'seq', 'lamport', 'kind'] as const).every(
      (name) => entry[name] === row[name],
    );
    return isSame && (isTombstone(entry) || sha256Hex(new TextEncoder().encode(body)) === row.hash);
  } catch {
    return false;
  }
};

const soundFiles = (database: DatabaseSync): readonly BackupFault[] => {
  const faults: BackupFault[] = [];
  for (const { hash, content } of database.prepare('select hash, content from file_content').iterate())
    if (!(content instanceof Uint8Array) || sha256Hex(content) !== hash)
      faults.push({ kind: 'file', hash: String(hash) });
  return faults;
};

const checks = [wholeFile, sameRows, soundEntries, soundFiles];
