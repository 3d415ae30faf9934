import type { Vector } from '@brinewright/journal';
import type { Kysely } from 'kysely';
import type { Database } from './schema.ts';

/** Of each stream and device the number up to which nothing is missing (J3). */
export const vectors = async (
  db: Kysely<Database>,
  company: string,
  streams: readonly string[],
): Promise<ReadonlyMap<string, Vector>> => {
  if (streams.length === 0) return new Map();
  const counted = await db
    .selectFrom('entry')
    .select(({ fn }) => [
      'stream',
      'device',
      fn.countAll<number>().as('count'),
      fn.min<number>('seq').as('least'),
      fn.max<number>('seq').as('most'),
    ])
    .where('company', '=', company)
    .where('stream', 'in', [...streams])
    .groupBy(['stream', 'device'])
    .execute();
  const found = new Map(streams.map((stream) => [stream, new Map<string, number>()]));
  for (const { stream, device, count, least, most } of counted) {
    if (least !== 1) continue;
    const end = count === most ? most : await endOfFirstRun(db, company, stream, device);
    found.get(stream)?.set(device, end);
  }
  return found;
};

/** The first number whose next one is not there. */
const endOfFirstRun = async (
  db: Kysely<Database>,
  company: string,
  stream: string,
  device: string,
): Promise<number> => {
  const { end } = await db
    .selectFrom('entry as one')
    .leftJoin('entry as next', (join) =>
      join
        .onRef('next.company', '=', 'one.company')
        .onRef('next.stream', '=', 'one.stream')
        .onRef('next.device', '=', 'one.device')
        .on(({ eb, ref }) => eb('next.seq', '=', eb(ref('one.seq'), '+', 1))),
    )
    .select(({ fn }) => fn.min<number>('one.seq').as('end'))
    .where('one.company', '=', company)
    .where('one.stream', '=', stream)
    .where('one.device', '=', device)
    .where('next.seq', 'is', null)
    .executeTakeFirstOrThrow();
  return end;
};
