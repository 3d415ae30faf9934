import type { Logged } from '@brinewright/journal';
import { CompiledQuery, type DialectAdapter, type Transaction } from 'kysely';
import { rowOf } from './rows.ts';
import type { Database, EntryTable } from './schema.ts';

/** Puts in what does not collide with what is there; gives how many went in. */
export const insertEntries = async (
  tx: Transaction<Database>,
  entries: readonly Logged[],
): Promise<number> => {
  const rows = entries.map(rowOf);
  const { numAffectedRows } = await tx.executeQuery(
    CompiledQuery.raw(textFor(tx, rows), rows.flatMap(valuesOf)),
  );
  return Number(numAffectedRows ?? 0);
};

const valuesOf = (row: EntryTable): unknown[] => Object.values(row);

/** Putting a query of hundreds of values together takes as long as running it: once for each number of rows. */
const texts = new WeakMap<DialectAdapter, Map<number, string>>();

const textFor = (tx: Transaction<Database>, rows: readonly EntryTable[]): string => {
  const { adapter } = tx.getExecutor();
  const kept = texts.get(adapter) ?? new Map<number, string>();
  texts.set(adapter, kept);
  const text = kept.get(rows.length) ?? compiled(tx, rows);
  kept.set(rows.length, text);
  return text;
};

const compiled = (tx: Transaction<Database>, rows: readonly EntryTable[]): string =>
  tx
    .insertInto('entry')
    .values(rows)
    .onConflict((it) => it.doNothing())
    .compile().sql;
