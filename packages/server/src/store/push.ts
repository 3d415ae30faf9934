import {
  assertAllNew,
  type Batch,
  isRedaction,
  type Judgement,
  judge,
  type Logged,
  type LogState,
  lamportReach,
  originOf,
  redact,
  type Verdict,
  withOrigins,
} from '@brinewright/journal';
import { type Kysely, sql, type Transaction } from 'kysely';
import { insertEntries } from './insert-entries.ts';
import { loggedOf, shownColumns } from './rows.ts';
import type { CompanyLogTable, Database } from './schema.ts';
import { thereFor } from './there-for.ts';

export type Pushed = LogState & { readonly verdicts: readonly Verdict[] };

/** Gives undefined, and has changed nothing, where not everything in the batch is new and sound. */
export type PushAllNew = (db: Kysely<Database>, batch: Batch) => Promise<Pushed | undefined>;

/** Nearly every batch is new and sound and goes the quick way; only of others each entry is looked at (S1, S2). */
export const push = async (db: Kysely<Database>, batch: Batch, quickly: PushAllNew): Promise<Pushed> =>
  (mayBeNew(batch) ? await quickly(db, batch) : undefined) ?? pushCarefully(db, batch);

const mayBeNew = ({ company, entries }: Batch): boolean =>
  entries.length > 0 &&
  entries.every(({ entry }) => entry.company === company && !isRedaction(entry) && entry.again === undefined);

/** Thrown to roll back: something in the batch is not new. */
class NotAllNew extends Error {}

/** Two statements in a transaction. */
export const pushInTransaction: PushAllNew = async (db, batch) => {
  try {
    return await db.transaction().execute((tx) => pushAllNew(tx, batch));
  } catch (error) {
    if (error instanceof NotAllNew) return undefined;
    throw error;
  }
};

const pushAllNew = async (tx: Transaction<Database>, batch: Batch): Promise<Pushed> => {
  const { company, entries, pusher, received } = batch;
  const top = entries.reduce((highest, { entry }) => Math.max(highest, entry.lamport), 0);
  const log = await takePlaces(tx, company, entries.length, top);
  if (log === undefined) throw new NotAllNew();
  const first = log.last - entries.length + 1;
  const logged = entries.map((sealed, at) => ({ ...sealed, position: first + at, pusher, received }));
  if ((await insertEntries(tx, logged)) < entries.length) throw new NotAllNew();
  return { ...log, verdicts: placesFrom(log.last, batch) };
};

/** The verdicts of a batch that was kept whole, up to place `last`. */
export const placesFrom = (last: number, { entries }: Batch): readonly Verdict[] =>
  entries.map(({ entry }, at) => ({
    id: entry.id,
    state: 'kept',
    position: last - entries.length + 1 + at,
  }));

/** The row lock makes the order of places the order of commits, without gaps, also after a rollback (S2). */
const takePlaces = (
  tx: Transaction<Database>,
  company: string,
  count: number,
  top: number,
): Promise<LogState | undefined> =>
  tx
    .updateTable('company_log')
    .set({
      last: sql`last + ${count}`,
      lamport: sql`case when lamport < ${top} then ${top} else lamport end`,
    })
    .where('company', '=', company)
    .where('lamport', '>=', top - lamportReach)
    .where('waiting', '=', 0)
    .returning(['last', 'epoch'])
    .executeTakeFirst();

const pushCarefully = (db: Kysely<Database>, batch: Batch): Promise<Pushed> =>
  db.transaction().execute(async (tx) => {
    const log = await lockLog(tx, batch.company);
    const judgement = judge(batch, await thereFor(tx, log, batch.entries));
    await keep(tx, log, judgement);
    return { epoch: log.epoch, last: judgement.last, verdicts: judgement.verdicts };
  });

/** Keeps entries composed by the own device under the lock: they are new, or composed wrongly. */
export const keepOwn = async (
  tx: Transaction<Database>,
  log: CompanyLogTable,
  batch: Batch,
): Promise<Judgement> => {
  const judgement = judge(batch, await thereFor(tx, log, batch.entries));
  assertAllNew(judgement, batch.entries);
  await keep(tx, log, judgement);
  return judgement;
};

/** Holds the company's log until the transaction ends: whoever else writes waits. */
export const lockLog = async (tx: Transaction<Database>, company: string): Promise<CompanyLogTable> => {
  const log = await tx
    .updateTable('company_log')
    .set({ last: sql`last` })
    .where('company', '=', company)
    .returningAll()
    .executeTakeFirst();
  if (log === undefined) throw new RangeError(`company ${company} was not begun`);
  return log;
};

const keep = async (
  tx: Transaction<Database>,
  { company, waiting }: CompanyLogTable,
  { added, redacted, last, lamport }: Judgement,
): Promise<void> => {
  if (added.length === 0) return;
  const inserted = await insertEntries(tx, added);
  if (inserted !== added.length)
    throw new Error(`${inserted} of ${added.length} entries judged new were inserted`);
  await redactHeld(tx, company, redacted);
  const waits = waiting > 0 || redacted.size > 0 ? await countWaiting(tx, company) : 0;
  await tx
    .updateTable('company_log')
    .set({ last, lamport, waiting: waits })
    .where('company', '=', company)
    .execute();
};

const redactHeld = async (
  tx: Transaction<Database>,
  company: string,
  redacted: Judgement['redacted'],
): Promise<void> => {
  if (redacted.size === 0) return;
  const targets = await heldLike(tx, company, [...redacted.keys()]);
  const by = withOrigins(redacted, (id) => targets.find(({ entry }) => entry.id === id)?.entry);
  for (const held of await heldLike(tx, company, [...by.keys()])) {
    const redaction = by.get(held.entry.id) ?? by.get(originOf(held.entry)) ?? '';
    const { text, position } = redact(held, redaction);
    if (text === held.text) continue;
    await tx
      .updateTable('entry')
      .set({ body: text })
      .where('company', '=', company)
      .where('position', '=', position)
      .execute();
  }
};

/** Entries with these ids, and those written again for them; rare, so that no index is kept for it. */
const heldLike = async (
  tx: Transaction<Database>,
  company: string,
  ids: readonly string[],
): Promise<readonly Logged[]> => {
  const rows = await tx
    .selectFrom('entry')
    .select([...shownColumns])
    .where('company', '=', company)
    .where(({ or, eb }) =>
      or([eb('id', 'in', [...ids]), ...ids.map((id) => eb('body', 'like', `%"again":"${id}"%`))]),
    )
    .execute();
  return rows.map(loggedOf).filter(({ entry }) => ids.includes(entry.id) || ids.includes(originOf(entry)));
};

const countWaiting = async (tx: Transaction<Database>, company: string): Promise<number> => {
  const { count } = await tx
    .selectFrom('entry as redaction')
    .leftJoin('entry as target', (join) =>
      join.onRef('target.company', '=', 'redaction.company').onRef('target.id', '=', 'redaction.redacts'),
    )
    .select(({ fn }) => fn.countAll<number>().as('count'))
    .where('redaction.company', '=', company)
    .where('redaction.redacts', 'is not', null)
    .where('target.id', 'is', null)
    .executeTakeFirstOrThrow();
  return count;
};
