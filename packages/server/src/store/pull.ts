import type { Logged, LogState, Wanted } from '@brinewright/journal';
import type { Kysely } from 'kysely';
import { loggedOf, shownColumns } from './rows.ts';
import type { Database } from './schema.ts';

export type Pulled = LogState & { readonly entries: readonly Logged[]; readonly more: boolean };

/** One snapshot: the epoch, the end of the log and the entries belong together (S3, S4). */
export const pull = (db: Kysely<Database>, company: string, wanted: Wanted, most: number): Promise<Pulled> =>
  inSnapshot(db, async (tx) => {
    const state = await logState(tx, company);
    const rows = await ('all' in wanted
      ? rowsAfter(tx, company, wanted.all, most + 1)
      : rowsOfStreams(tx, company, wanted.streams, most + 1));
    return { ...state, entries: rows.slice(0, most).map(loggedOf), more: rows.length > most };
  });

/** SQLite reads a snapshot in any transaction. */
export const inSnapshot = <T>(db: Kysely<Database>, work: (tx: Kysely<Database>) => Promise<T>): Promise<T> =>
  db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(work);

export const logState = async (db: Kysely<Database>, company: string): Promise<LogState> => {
  const log = await db
    .selectFrom('company_log')
    .select(['last', 'epoch'])
    .where('company', '=', company)
    .executeTakeFirst();
  if (log === undefined) throw new RangeError(`company ${company} was not begun`);
  return log;
};

const rowsAfter = (db: Kysely<Database>, company: string, after: number, limit: number) =>
  db
    .selectFrom('entry')
    .select([...shownColumns])
    .where('company', '=', company)
    .where('position', '>', after)
    .orderBy('position')
    .limit(limit)
    .execute();

/** So many streams are asked for in one query: SQLite bounds the depth of a condition. */
const streamsAtOnce = 100;

/** Places first, from an index; then only the bodies that go into the page. */
const rowsOfStreams = async (
  db: Kysely<Database>,
  company: string,
  streams: ReadonlyMap<string, number>,
  limit: number,
) => {
  const asked = [...streams];
  const places: number[] = [];
  for (let from = 0; from < asked.length; from += streamsAtOnce)
    places.push(...(await placesOf(db, company, asked.slice(from, from + streamsAtOnce), limit)));
  const wanted = places.toSorted((a, b) => a - b).slice(0, limit);
  return wanted.length === 0 ? [] : rowsAt(db, company, wanted);
};

const placesOf = async (
  db: Kysely<Database>,
  company: string,
  streams: readonly (readonly [string, number])[],
  limit: number,
): Promise<readonly number[]> => {
  const rows = await db
    .selectFrom('entry')
    .select('position')
    .where('company', '=', company)
    .where(({ eb, and, or }) =>
      or(streams.map(([stream, after]) => and([eb('stream', '=', stream), eb('position', '>', after)]))),
    )
    .orderBy('position')
    .limit(limit)
    .execute();
  return rows.map(({ position }) => position);
};

const rowsAt = (db: Kysely<Database>, company: string, places: readonly number[]) =>
  db
    .selectFrom('entry')
    .select([...shownColumns])
    .where('company', '=', company)
    .where('position', 'in', places)
    .orderBy('position')
    .execute();
