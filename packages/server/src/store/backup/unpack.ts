import { chmodSync, copyFileSync, rmSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { Kysely } from 'kysely';
import { openFiles } from '../../files/file-store.ts';
import { syncFile } from '../durable.ts';
import { migrate } from '../migrator.ts';
import { NodeSqliteDialect } from '../node-sqlite-dialect.ts';
import type { Database } from '../schema.ts';
import { StoreFault } from '../store-fault.ts';
import { dropBackupTables } from './format.ts';

export type Fresh = { readonly epoch: string; readonly device: string; readonly now: string };

/**
 * A verified backup made into a record of this version at `made`, with a new epoch and own device; its files go to
 * their folder, where they take nothing's place.
 */
export const unpack = async (
  from: string,
  made: string,
  files: string,
  company: string,
  fresh: Fresh,
): Promise<void> => {
  rmSync(made, { force: true });
  copyFileSync(from, made);
  chmodSync(made, 0o600);
  const database = new DatabaseSync(made);
  const db = new Kysely<Database>({ dialect: new NodeSqliteDialect(database) });
  try {
    database.exec('pragma journal_mode = off; pragma synchronous = off');
    await unpackFiles(database, files, company);
    dropBackupTables(database);
    await migrate(db, 'sqlite', from);
    await renew(db, company, fresh);
    database.exec('vacuum');
  } finally {
    database.close();
  }
  syncFile(made);
};

const unpackFiles = async (database: DatabaseSync, folder: string, company: string): Promise<void> => {
  const files = await openFiles(folder, { tidy: false });
  for (const { hash, content } of database.prepare('select hash, content from file_content').iterate()) {
    if (!(content instanceof Uint8Array)) continue;
    const came = await files.receive(company, String(hash), once(content));
    if (came !== 'durable') throw new StoreFault('disk', folder, new Error(came));
  }
};

async function* once(content: Uint8Array): AsyncGenerator<Uint8Array> {
  yield content;
}

const renew = async (db: Kysely<Database>, company: string, fresh: Fresh): Promise<void> => {
  const { epoch, device, now } = fresh;
  await db.updateTable('company_log').set({ epoch, device }).where('company', '=', company).execute();
  await db.insertInto('own_device').values({ company, device, since: now }).execute();
};
