import { isRedaction, numberOf, type Sealed, type There, withOrigins } from '@brinewright/journal';
import type { Transaction } from 'kysely';
import { entryOf } from './rows.ts';
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
    redactedBy: await redactionsFor(tx, company, waiting, entries),
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

/** Asked only where there may be one: for a target that has not come yet, or for what is written again (S1a, R1). */
const redactionsFor = async (
  tx: Transaction<Database>,
  company: string,
  waiting: number,
  entries: readonly Sealed[],
): Promise<There['redactedBy']> => {
  const again = entries.flatMap(({ entry }) => entry.again ?? []);
  if (waiting === 0 && again.length === 0) return new Map();
  const rows = await tx
    .selectFrom('entry as redaction')
    .leftJoin('entry as target', (join) =>
      join.onRef('target.company', '=', 'redaction.company').onRef('target.id', '=', 'redaction.redacts'),
    )
    .select(['redaction.redacts as target', 'redaction.id as by', 'target.body as body'])
    .where('redaction.company', '=', company)
    .where('redaction.redacts', 'is not', null)
    .orderBy('redaction.position', 'desc')
    .execute();
  const bodies = new Map(rows.map(({ target, body }) => [target, body]));
  const redactedBy = new Map(
    rows.flatMap(({ target, by }) => (target === null ? [] : [[target, by] as const])),
  );
  return withOrigins(redactedBy, (id) => {
    const body = bodies.get(id);
    return typeof body === 'string' ? entryOf(body) : undefined;
  });
};
