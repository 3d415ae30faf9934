import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { JournalStore, Sealed } from '@brinewright/journal';
import { aHand, anEntry, aRedaction, batchOf, entriesOf, nextUuid } from '@brinewright/journal/testing';
import type { Dialect } from 'kysely';
import { beforeAll, describe, expect, it } from 'vitest';
import { failingQueries } from '../testing/failing-queries.ts';
import { NthFailure } from '../testing/nth-failure.ts';
import { withCluster } from '../testing/with-cluster.ts';
import { migratePostgres, openPostgres } from './open-postgres.ts';
import { openSqlite } from './open-sqlite.ts';
import type { SqlStore } from './sql-store.ts';

/** Each changes the log by some entries, or not at all. */
const steps: Readonly<Record<string, (company: string) => (store: JournalStore) => Promise<unknown>>> = {
  'a push of new entries': (company) => {
    const entries = entriesOf(aHand({ company }), 3);
    return (store) => store.push(batchOf(company, entries));
  },
  'a push with a fork and a repeat in it': (company) => {
    const hand = aHand({ company });
    const one = anEntry(hand, 1);
    const entries = [one, anEntry(hand, 1), one, anEntry(hand, 2), anEntry(hand, 3)];
    return (store) => store.push(batchOf(company, entries));
  },
  'a push of an entry and its redaction': (company) => {
    const hand = aHand({ company });
    const one = anEntry(hand, 1);
    const entries = [one, aRedaction(hand, 2, one.entry.id), anEntry(hand, 3)];
    return (store) => store.push(batchOf(company, entries, { isOwner: true }));
  },
  'three entries of its own': (company) => {
    const stream = nextUuid();
    const compose = (device: string): readonly Sealed[] => entriesOf({ company, stream, device }, 3);
    const from = { company, pusher: 'workshop', received: '2026-11-25T12:00:00.000Z' };
    return async (store) => {
      const { kept } = await store.write(from, [stream], ({ device, vectors }) =>
        vectors.get(stream)?.get(device) === 3 ? [] : compose(device),
      );
      return kept.length;
    };
  },
};

const failEach = (open: (around: (dialect: Dialect) => Dialect) => Promise<SqlStore>): void => {
  const tries = Object.entries(steps).flatMap(([name, step]) =>
    (['before', 'after'] as const).map((when) => ({ name, step, when })),
  );
  it.each(tries)('$name, $when the query', async ({ step, when }) => {
    const nth = new NthFailure();
    const store = await open(failingQueries(nth, when));
    let tried = 0;
    let hasFailed = true;
    while (hasFailed) {
      tried += 1;
      const company = nextUuid();
      await store.begin(company);
      const run = step(company);
      nth.arm(tried);
      await run(store).catch(() => undefined);
      hasFailed = nth.hasFailed;
      nth.arm();
      const { last, entries } = await store.pull(company, { all: 0 }, 10);
      expect(entries.map(({ position }) => position)).toEqual(oneTo(last));
      expect([0, 3]).toContain(last);
      await run(store);
      const after = await store.pull(company, { all: 0 }, 10);
      expect(after.entries.map(({ position }) => position)).toEqual([1, 2, 3]);
      if (last === 3) expect(after.entries).toEqual(entries);
    }
    await store.close();
    expect(tried).toBeGreaterThan(1);
  });
};

const oneTo = (last: number): number[] => Array.from({ length: last }, (_, at) => at + 1);

describe('whichever query fails on SQLite, nothing is half there after', () => {
  failEach(async (around) => {
    const folder = mkdtempSync(join(tmpdir(), 'bw-nth-'));
    const store = await openSqlite(join(folder, 'workshop.sqlite'), { around });
    rmSync(folder, { recursive: true });
    return store;
  });
});

withCluster('whichever query fails on PostgreSQL, nothing is half there after', (cluster) => {
  beforeAll(() => migratePostgres(cluster().url('owner'), 'app'));
  failEach((around) => openPostgres(cluster().url('app'), { around, connections: 2 }));
});
