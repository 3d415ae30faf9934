import { createHash } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';

/*
 * A backup is one SQLite file: the tables of a record as the migrations make them, with the rows of one company; its
 * files; and a sum over each table, so that no changed byte that means anything goes unseen.
 */

export const backupFormat = 1;

export const makeBackupTables = (database: DatabaseSync): void =>
  database.exec(`
    create table file_content (hash text primary key not null, content blob not null) strict;
    create table backup_info (format integer not null, company text not null, made_at text not null) strict;
    create table backup_part (name text primary key not null, row_count integer not null, digest text not null) strict;
  `);

/** What a backup has beyond a record. */
export const dropBackupTables = (database: DatabaseSync): void =>
  database.exec('drop table file_content; drop table backup_info; drop table backup_part');

/** What is summed of each table, in the order of its key. The content of files has sums of its own: their names. */
const parts: Readonly<Record<string, string>> = {
  backup_info: 'select * from backup_info',
  company_log: 'select * from company_log order by company',
  entry: 'select * from entry order by company, position',
  file_content: 'select hash, length(content) from file_content order by hash',
  kysely_migration: 'select * from kysely_migration order by name',
  own_device: 'select * from own_device order by company, device',
  paired_device: 'select * from paired_device order by company, id',
  workshop: 'select * from workshop order by company',
};

export type Part = { readonly name: string; readonly rows: number; readonly digest: string };

export const partNames: readonly string[] = Object.keys(parts);

export const sumPart = (database: DatabaseSync, name: string): Part => {
  const sum = createHash('sha256');
  let rows = 0;
  for (const row of database.prepare(parts[name] ?? '').iterate()) {
    sum.update(`${JSON.stringify(Object.values(row))}\n`);
    rows += 1;
  }
  return { name, rows, digest: sum.digest('hex') };
};

/** The last thing written into a backup. */
export const sealBackup = (database: DatabaseSync): void => {
  const insert = database.prepare('insert into backup_part values (?, ?, ?)');
  for (const { name, rows, digest } of partNames.map((one) => sumPart(database, one)))
    insert.run(name, rows, digest);
};
