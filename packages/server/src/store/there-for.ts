import { isRedaction, numberOf, type Sealed, type There } from '@brinewright/journal';
import type { Transaction } from 'kysely';
import type { CompanyLogTable, Database } from './schema.ts';

/** What the store holds of what a batch touches, read under the lock of the company's log. */
export const thereFor = async (
  tx: Transaction<Database>,
  { company, last, lamport, waiting }: CompanyLogTable,
  entries: readonly Sealed[],
): Promise<There> => {
  const ids = entries.map(({ entry }) => entry.id);
  return {
    last,
    lamport,
    byId: await heldById(tx, company, ids),
    numbers: await numbersHeld(tx, company, entries),
    ownDevices: await ownDevices(tx, company, entries),
    redactedBy: waiting > 0 ? await redactionsHeld(tx, company, ids) : new Map(),
  };
};

const heldById = async (
  tx: Transaction<Database>,
  company: string,
  ids: readonly string[],
): Promise<There['byId']> => {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .selectFrom('entry')
    .select(['id', 'hash', 'position'])
    .where('company', '=', company)
    .where('id', 'in', ids)
    .execute();
  return new Map(rows.map(({ id, hash, position }) => [id, { hash, position }]));
};

const numbersHeld = async (
  tx: Transaction<Database>,
  company: string,
  entries: readonly Sealed[],
): Promise<There['numbers']> => {
  const held = new Set<string>();
  for (const ofOne of Map.groupBy(entries, ({ entry }) => `${entry.stream}/${entry.device}`).values()) {
    const [first] = ofOne;
    if (first === undefined) continue;
    const { stream, device } = first.entry;
    const rows = await tx
      .selectFrom('entry')
      .select('seq')
      .where('company', '=', company)
      .where('stream', '=', stream)
      .where('device', '=', device)
      .where(
        'seq',
        'in',
        ofOne.map(({ entry }) => entry.seq),
      )
      .execute();
    for (const { seq } of rows) held.add(numberOf({ stream, device, seq }));
  }
  return held;
};

/** Asked only where it can matter: for who may redact (R1). */
const ownDevices = async (
  tx: Transaction<Database>,
  company: string,
  entries: readonly Sealed[],
): Promise<There['ownDevices']> => {
  if (!entries.some(({ entry }) => isRedaction(entry))) return new Set();
  const rows = await tx.selectFrom('own_device').select('device').where('company', '=', company).execute();
  return new Set(rows.map(({ device }) => device));
};

const redactionsHeld = async (
  tx: Transaction<Database>,
  company: string,
  ids: readonly string[],
): Promise<There['redactedBy']> => {
  if (ids.length === 0) return new Map();
  const rows = await tx
    .selectFrom('entry')
    .select(['redacts', 'id'])
    .where('company', '=', company)
    .where('redacts', 'in', ids)
    .orderBy('position')
    .execute();
  return new Map(rows.flatMap(({ redacts, id }) => (redacts === null ? [] : [[redacts, id] as const])));
};
