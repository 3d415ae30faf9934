import { aHand, anEntry, batchOf, entriesOf, nextUuid } from '@brinewright/journal/testing';
import { sql } from 'kysely';
import pg from 'pg';
import { beforeAll, describe, expect, it } from 'vitest';
import { withCluster } from '../testing/with-cluster.ts';
import { connectPostgres, migratePostgres, openPostgres } from './open-postgres.ts';
import { StoreFault } from './store-fault.ts';

const codeOf = (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => 'fine',
    (error: unknown) => (error instanceof StoreFault ? error.code : error),
  );

withCluster('a record in PostgreSQL', (cluster) => {
  beforeAll(() => migratePostgres(cluster().url('owner'), 'app'));

  describe('the role a server logs in as', () => {
    it.each([
      ['delete from entry', '42501'],
      ['update entry set hash = hash', '42501'],
      ['update company_log set epoch = epoch', '42501'],
      ['delete from company_log', '42501'],
      ['truncate entry', '42501'],
      ['drop table entry', '42501'],
      ['create table mine (n int)', '42501'],
      ['create role other', '42501'],
    ])('may not: %s', async (statement, code) => {
      const client = new pg.Client(cluster().url('app'));
      await client.connect();
      await expect(client.query(statement)).rejects.toMatchObject({ code });
      await client.end();
    });

    it('cannot bring the tables up to date and says so', async () => {
      cluster().createDatabase('bare');
      expect(await codeOf(openPostgres(cluster().url('app', 'bare')))).toBe('not-migrated');
    });
  });

  it('is made by a role that may make it', async () => {
    cluster().createDatabase('own');
    const store = await openPostgres(cluster().url('owner', 'own'));
    await store.beginWorkshop(nextUuid(), 'Ana');
    await store.close();
    expect(await codeOf(openPostgres(cluster().url('owner', 'own')).then((it) => it.close()))).toBe('fine');
  });

  it('is made once when two servers start at the same time', async () => {
    cluster().createDatabase('both');
    const stores = await Promise.all([1, 2].map(() => openPostgres(cluster().url('owner', 'both'))));
    const company = nextUuid();
    await Promise.all(stores.map((store) => store.begin(company)));
    const [one, two] = await Promise.all(stores.map((store) => store.state(company)));
    expect(one).toEqual(two);
    await Promise.all(stores.map((store) => store.close()));
  });

  it('is refused when it is of a newer version', async () => {
    cluster().createDatabase('newer');
    const url = cluster().url('owner', 'newer');
    await migratePostgres(url);
    const db = connectPostgres(url);
    await sql`insert into kysely_migration values ('999-later', '2027')`.execute(db);
    await db.destroy();
    expect(await codeOf(openPostgres(url))).toBe('newer');
    expect(await codeOf(migratePostgres(url))).toBe('newer');
  });

  it('shows no password in a fault', async () => {
    const url = 'postgresql://app:secret@/none?host=/nowhere&password=secret&port=1';
    const fault = await openPostgres(url).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(StoreFault);
    expect(String(fault)).not.toContain('secret');
    expect(String(fault)).toContain('postgresql://app@/none?host=/nowhere&port=1');
  });

  it('goes on by itself after the database was killed and came back', async () => {
    const hand = aHand();
    const store = await openPostgres(cluster().url('app'));
    await store.begin(hand.company);
    await store.push(batchOf(hand.company, entriesOf(hand, 3)));
    await cluster().kill();
    expect(await codeOf(store.push(batchOf(hand.company, [anEntry(hand, 4)])))).toBe('store-away');
    expect(await codeOf(store.state(hand.company))).toBe('store-away');
    expect(await codeOf(openPostgres(cluster().url('app')))).toBe('store-away');
    cluster().startAgain();
    expect((await store.push(batchOf(hand.company, [anEntry(hand, 4)]))).last).toBe(4);
    await store.close();
  });

  it('says away, not something else, when it is killed under twenty pushes', async () => {
    const store = await openPostgres(cluster().url('app'));
    const company = nextUuid();
    await store.begin(company);
    const batches = Array.from({ length: 20 }, () => batchOf(company, entriesOf(aHand({ company }), 20)));
    const pushing = Promise.all(batches.map((batch) => codeOf(store.push(batch))));
    await cluster().kill();
    const ended = await pushing;
    expect(ended.filter((one) => one !== 'fine' && one !== 'store-away')).toEqual([]);
    cluster().startAgain();
    const replies = await Promise.all(batches.map((batch) => store.push(batch)));
    const places = replies.flatMap(({ verdicts }) =>
      verdicts.map((verdict) => (verdict.state === 'kept' ? verdict.position : 0)),
    );
    expect(places.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 400 }, (_, at) => at + 1));
    await store.close();
  });
});
