import { aHand, anEntry, batchOf } from '@brinewright/journal/testing';
import pg from 'pg';
import { beforeAll, expect, it } from 'vitest';
import { withCluster } from '../testing/with-cluster.ts';
import { migratePostgres, openPostgres } from './open-postgres.ts';

/*
 * S2: a reader that goes on from the highest place it saw must miss nothing, also when two transactions are in flight
 * and the one with the lower place commits last.
 */
withCluster('two transactions in flight on PostgreSQL', (cluster) => {
  beforeAll(() => migratePostgres(cluster().url('owner'), 'app'));

  const clients = async (): Promise<readonly [pg.Client, pg.Client, pg.Client]> => {
    const [one, two, reader] = [0, 1, 2].map(() => new pg.Client(cluster().url('owner')));
    if (one === undefined || two === undefined || reader === undefined) throw new Error('three clients');
    for (const client of [one, two, reader]) await client.connect();
    return [one, two, reader];
  };

  it('lose an entry where places come from a sequence', async () => {
    const [slow, quick, reader] = await clients();
    await reader.query('create table naive (place bigserial primary key, said text)');
    const read = async (after: number): Promise<readonly { place: string; said: string }[]> =>
      (await reader.query('select * from naive where place > $1 order by place', [after])).rows;
    await slow.query('begin');
    await slow.query(`insert into naive (said) values ('first')`);
    await quick.query('begin');
    await quick.query(`insert into naive (said) values ('second')`);
    await quick.query('commit');
    const page = await read(0);
    await slow.query('commit');
    const next = await read(Number(page.at(-1)?.place));
    expect([...page, ...next].map(({ said }) => said)).toEqual(['second']);
    for (const client of [slow, quick, reader]) await client.end();
  });

  it('lose none where places come from the company’s log', async () => {
    const hand = aHand();
    const other = aHand({ company: hand.company });
    const { company } = hand;
    const all = await clients();
    const [slow] = all;
    const store = await openPostgres(cluster().url('app'));
    await store.begin(company);
    const [first, second] = [anEntry(hand, 1), anEntry(other, 1)];

    await slow.query('begin');
    await slow.query('update company_log set last = last + 1 where company = $1', [company]);
    let isPushed = false;
    const pushing = store.push(batchOf(company, [second])).then((reply) => {
      isPushed = true;
      return reply;
    });
    await untilBlocked(slow);
    expect(isPushed).toBe(false);
    const page = await store.pull(company, { all: 0 }, 10);
    expect(page).toMatchObject({ last: 0, entries: [] });
    const { entry, text, hash } = first;
    await slow.query(
      `insert into entry (company, position, id, stream, device, seq, lamport, kind, hash, body, pusher, received)
       values ($1, 1, $2, $3, $4, 1, 1, $5, $6, $7, 'phone', '2026-11-25T12:00:00.000Z')`,
      [company, entry.id, entry.stream, entry.device, entry.kind, hash, text],
    );
    await slow.query('commit');
    expect((await pushing).verdicts).toEqual([{ id: second.entry.id, state: 'kept', position: 2 }]);
    const next = await store.pull(company, { all: page.last }, 10);
    expect(next.entries.map((one) => one.entry.id)).toEqual([first.entry.id, second.entry.id]);
    for (const client of all) await client.end();
    await store.close();
  });
});

/** Until another transaction waits for a lock. */
const untilBlocked = async (client: pg.Client): Promise<void> => {
  const { rows } = await client.query('select 1 from pg_locks where not granted');
  if (rows.length === 0) await untilBlocked(client);
};
