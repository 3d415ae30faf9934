import type { Kysely } from 'kysely';
import type { CompanyLogTable, Database, EntryTable } from '../schema.ts';

/** So many entries are read and written at once. */
const pageSize = 500;

/** All rows of a company but those of its log, from one database into another; gives how many entries. */
export const copyRows = async (
  from: Kysely<Database>,
  to: Kysely<Database>,
  company: string,
): Promise<number> => {
  await copyDevices(from, to, company);
  const workshops = await from.selectFrom('workshop').selectAll().where('company', '=', company).execute();
  if (workshops.length > 0) await to.insertInto('workshop').values(workshops).execute();
  let copied = 0;
  let after = 0;
  for (let page = await entriesAfter(from, company, after); page.length > 0; ) {
    await to.insertInto('entry').values(page).execute();
    copied += page.length;
    after = page.at(-1)?.position ?? after;
    page = await entriesAfter(from, company, after);
  }
  return copied;
};

const copyDevices = async (from: Kysely<Database>, to: Kysely<Database>, company: string): Promise<void> => {
  const own = await from.selectFrom('own_device').selectAll().where('company', '=', company).execute();
  if (own.length > 0)
    await to
      .insertInto('own_device')
      .values(own)
      .onConflict((it) => it.doNothing())
      .execute();
  const paired = await from.selectFrom('paired_device').selectAll().where('company', '=', company).execute();
  for (const one of paired) await to.insertInto('paired_device').values(one).execute();
};

const entriesAfter = (db: Kysely<Database>, company: string, after: number): Promise<EntryTable[]> =>
  db
    .selectFrom('entry')
    .selectAll()
    .where('company', '=', company)
    .where('position', '>', after)
    .orderBy('position')
    .limit(pageSize)
    .execute();

export const logOf = (db: Kysely<Database>, company: string): Promise<CompanyLogTable | undefined> =>
  db.selectFrom('company_log').selectAll().where('company', '=', company).executeTakeFirst();
