import { type Batch, lamportReach } from '@brinewright/journal';
import { type Kysely, sql } from 'kysely';
import { type Pushed, placesFrom } from './push.ts';
import type { Database } from './schema.ts';

/**
 * A batch of new entries in one statement, which is a transaction of its own: PostgreSQL answers each question over a
 * wire, and while a batch asks, the next one of the company waits. Undefined where something is not new; then nothing
 * has happened.
 */
export const pushInOne = async (db: Kysely<Database>, batch: Batch): Promise<Pushed | undefined> => {
  try {
    const { rows } = await statement(batch).execute(db);
    const [log] = rows;
    return log === undefined ? undefined : { ...log, verdicts: placesFrom(log.last, batch) };
  } catch (error) {
    if (isTaken(error)) return undefined;
    throw error;
  }
};

/** The update takes the row lock of the company's log before any row is put in (S2). */
const statement = ({ company, entries, pusher, received }: Batch) => {
  const count = entries.length;
  const top = entries.reduce((highest, { entry }) => Math.max(highest, entry.lamport), 0);
  const all = entries.map(({ entry }) => entry);
  return sql<{ last: number; epoch: string }>`
    with log as (
      update company_log
      set last = last + ${count}::bigint, lamport = greatest(lamport, ${top}::bigint)
      where company = ${company} and lamport >= ${top - lamportReach}::bigint and waiting = 0
      returning last, epoch
    ), put as (
      insert into entry (company, position, id, stream, device, seq, lamport, kind, hash, body, pusher, received)
      select ${company}::uuid, log.last - ${count}::bigint + place,
        id, stream, device, seq, lamport, kind, hash, body, ${pusher}, ${received}
      from log, unnest(
        ${all.map(({ id }) => id)}::uuid[],
        ${all.map(({ stream }) => stream)}::uuid[],
        ${all.map(({ device }) => device)}::uuid[],
        ${all.map(({ seq }) => seq)}::bigint[],
        ${all.map(({ lamport }) => lamport)}::bigint[],
        ${all.map(({ kind }) => kind)}::text[],
        ${entries.map(({ hash }) => hash)}::text[],
        ${entries.map(({ text }) => text)}::text[]
      ) with ordinality as it (id, stream, device, seq, lamport, kind, hash, body, place)
    )
    select last, epoch from log`;
};

/** Unique violation: an id or a number is there already. */
const isTaken = (error: unknown): boolean =>
  typeof error === 'object' && error !== null && 'code' in error && error.code === '23505';
