import { type Kysely, sql } from 'kysely';
import { type Migration, Migrator } from 'kysely/migration';
import type { Flavour } from './flavour.ts';
import { journal001 } from './migrations/001-journal.ts';
import { StoreFault } from './store-fault.ts';

/** Every change of the tables, in order; never edited once it was out. */
const migrationsOf = (flavour: Flavour): Record<string, Migration> => ({
  '001-journal': journal001(flavour),
});

export const knownMigrations: readonly string[] = Object.keys(migrationsOf('sqlite'));

/** What the database went through so far; undefined where it is none of ours. */
export const migrationsDone = async <T>(
  db: Kysely<T>,
  flavour: Flavour,
): Promise<readonly string[] | undefined> => {
  const table = await (flavour === 'sqlite'
    ? sql<{ name: string }>`select name from sqlite_master where name = 'kysely_migration'`
    : sql<{ name: string }>`select 1 as name where to_regclass('kysely_migration') is not null`
  ).execute(db);
  if (table.rows.length === 0) return undefined;
  const done = await sql<{ name: string }>`select name from kysely_migration order by name`.execute(db);
  return done.rows.map(({ name }) => name);
};

/** Whether nothing is left to do. @throws StoreFault 'newer' for the database of a newer program. */
export const isNewest = (done: readonly string[], where: string): boolean => {
  const unknown = done.filter((name) => !knownMigrations.includes(name));
  if (unknown.length > 0) throw new StoreFault('newer', where, new Error(unknown.join(', ')));
  return knownMigrations.every((name) => done.includes(name));
};

/** Brings the tables up to this program, whole or not at all. */
export const migrate = async <T>(db: Kysely<T>, flavour: Flavour, where: string): Promise<void> => {
  const done = (await migrationsDone(db, flavour)) ?? [];
  if (isNewest(done, where)) return;
  const provider = { getMigrations: async () => migrationsOf(flavour) };
  const { error } = await new Migrator({ db, provider }).migrateToLatest();
  if (error !== undefined) throw error;
};
