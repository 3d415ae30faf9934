import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Kysely, type Transaction } from 'kysely';
import { openFiles } from '../../files/file-store.ts';
import { migrate } from '../migrator.ts';
import { NodeSqliteDialect } from '../node-sqlite-dialect.ts';
import { connectPostgres } from '../open-postgres.ts';
import type { CompanyLogTable, Database } from '../schema.ts';
import { asFault, StoreFault, withoutPassword } from '../store-fault.ts';
import { begunWorkshop } from '../workshop-store.ts';
import { writeBackup } from './backup.ts';
import { copyRows, logOf } from './copy-rows.ts';
import { type Place, stampOf } from './place.ts';
import { type Fresh, unpack } from './unpack.ts';

export type PostgresRestore = Fresh & {
  readonly from: string;
  readonly place: Extract<Place, { readonly kind: 'postgres' }>;
  readonly company: string;
  readonly asideFolder: string;
};

/** As the owner of the tables: nobody else may take entries out. */
export const restorePostgres = async (options: PostgresRestore): Promise<string | undefined> => {
  const { from, place, company } = options;
  const where = withoutPassword(place.url);
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-restore-'));
  const db = connectPostgres(place.url);
  try {
    const made = join(folder, 'record.sqlite');
    await unpack(from, made, place.files, company, options);
    await migrate(db, 'postgres', where);
    return await replaceFrom(db, made, options, where);
  } catch (error) {
    throw asFault(error, where);
  } finally {
    await db.destroy();
    rmSync(folder, { recursive: true, force: true });
  }
};

const replaceFrom = async (
  db: Kysely<Database>,
  made: string,
  options: PostgresRestore,
  where: string,
): Promise<string | undefined> => {
  const restored = new Kysely<Database>({ dialect: new NodeSqliteDialect(new DatabaseSync(made)) });
  try {
    return await db.transaction().execute((tx) => replace(tx, restored, options, where));
  } finally {
    await restored.destroy();
  }
};

/** All in one transaction that holds the company's log: what is pushed meanwhile comes after the restored entries. */
const replace = async (
  tx: Transaction<Database>,
  restored: Kysely<Database>,
  options: PostgresRestore,
  where: string,
): Promise<string | undefined> => {
  const { company } = options;
  const workshop = await begunWorkshop(tx);
  if (workshop !== undefined && workshop.company !== company) throw new StoreFault('other-workshop', where);
  const log = await logOf(restored, company);
  if (log === undefined) throw new StoreFault('nothing-here', options.from);
  const isThere =
    (await tx
      .selectFrom('company_log')
      .select('last')
      .where('company', '=', company)
      .forUpdate()
      .executeTakeFirst()) !== undefined;
  const aside = isThere ? await keepAside(tx, options) : undefined;
  if (isThere) await empty(tx, company);
  await putLog(tx, log);
  await copyRows(restored, tx, company);
  return aside;
};

const keepAside = async (tx: Transaction<Database>, options: PostgresRestore): Promise<string> => {
  const { place, company, asideFolder, now } = options;
  const files = await openFiles(place.files, { tidy: false });
  const to = join(asideFolder, `before-restore-${stampOf(now)}.sqlite`);
  return (await writeBackup({ from: tx, files, company, to, now })).path;
};

/** The log stays, so that whoever waits for it finds it; own devices stay own. */
const empty = async (tx: Transaction<Database>, company: string): Promise<void> => {
  for (const table of ['entry', 'paired_device', 'workshop'] as const)
    await tx.deleteFrom(table).where('company', '=', company).execute();
};

const putLog = async (tx: Transaction<Database>, log: CompanyLogTable): Promise<void> => {
  const { company, ...rest } = log;
  await tx
    .insertInto('company_log')
    .values(log)
    .onConflict((it) => it.column('company').doUpdateSet(rest))
    .execute();
};
