/*
 * Pushes per second on both stores beside a bare insert of the same rows in the same run, in turns, each waiting for
 * the disk. The verdict is on the ratio: what the rules of the journal cost on top of what the database costs.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { JournalStore } from '@brinewright/journal';
import { migratePostgres, openPostgres, openSqlite } from '@brinewright/server/store';
import {
  type BareTable,
  barePostgres,
  bareSqlite,
  type Cluster,
  postgresMissing,
  postgresPrograms,
  startCluster,
} from '@brinewright/server/testing';
import { BatchMaker, batchSize, type Work } from './push-batches.ts';

/** At least so much of the rate of the bare insert. */
const budget = 0.5;

type Trial = {
  readonly name: string;
  readonly store: JournalStore;
  /** One connection for each client. */
  readonly bare: readonly BareTable[];
  readonly companies: number;
  readonly isJudged: boolean;
};

/** In milliseconds, each of one batch. */
type Sides = { readonly push: number[]; readonly bare: number[] };
type Result = { readonly name: string; readonly ratio: number; readonly isJudged: boolean };

/** Prints its table; gives the names of the trials that passed their budget. */
export const benchPushes = async (smoke: boolean): Promise<readonly string[]> => {
  console.log(`\npushes of ${batchSize} entries, waiting for the disk${smoke ? ', smoke' : ''}`);
  console.log(
    `${''.padEnd(40)}${['push/s', 'bare/s', 'ratio', 'p99', 'bare p99'].map((it) => it.padStart(9)).join('')}   (ms)`,
  );
  const results = [...(await onSqlite(smoke)), ...(await onPostgres(smoke))];
  const under = results.filter(({ ratio, isJudged }) => isJudged && ratio < budget).map(({ name }) => name);
  console.log(
    `budget ${budget} of the bare insert: ${under.length === 0 ? 'held' : `not by ${under.join(', ')}`}`,
  );
  return under;
};

const onSqlite = async (smoke: boolean): Promise<readonly Result[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-bench-'));
  const store = await openSqlite(join(folder, 'workshop.sqlite'));
  const bare = bareSqlite(join(folder, 'bare.sqlite'));
  try {
    const trial = { name: 'SQLite, one client', store, bare: [bare], companies: 1, isJudged: true };
    return [await run(trial, smoke)];
  } finally {
    await bare.close();
    await store.close();
    rmSync(folder, { recursive: true });
  }
};

const onPostgres = async (smoke: boolean): Promise<readonly Result[]> => {
  if (postgresPrograms() === undefined) {
    console.log(postgresMissing);
    return [];
  }
  const cluster = await startCluster({ fsync: true });
  try {
    return await onCluster(cluster, smoke);
  } finally {
    cluster.stop();
  }
};

const onCluster = async (cluster: Cluster, smoke: boolean): Promise<readonly Result[]> => {
  await migratePostgres(cluster.url('owner'), 'app');
  const store = await openPostgres(cluster.url('app'));
  const bare: BareTable[] = [];
  for (let client = 0; client < 8; client += 1) bare.push(await barePostgres(cluster.url('owner')));
  try {
    const trials: readonly Omit<Trial, 'store'>[] = [
      { name: 'PostgreSQL, one client', bare: bare.slice(0, 1), companies: 1, isJudged: true },
      { name: 'PostgreSQL, eight clients, 50 companies', bare, companies: 50, isJudged: true },
      { name: 'PostgreSQL, eight clients, one company', bare, companies: 1, isJudged: false },
    ];
    const results: Result[] = [];
    for (const trial of trials) results.push(await run({ ...trial, store }, smoke));
    return results;
  } finally {
    for (const one of bare) await one.close();
    await store.close();
  }
};

const rounds = (smoke: boolean): { readonly warm: number; readonly count: number; readonly each: number } =>
  smoke ? { warm: 1, count: 1, each: 2 } : { warm: 3, count: 40, each: 10 };

/** Push and bare insert take turns, so that a busy disk slows both. */
const run = async (trial: Trial, smoke: boolean): Promise<Result> => {
  const { warm, count, each } = rounds(smoke);
  const next = await planOf(trial);
  const sides: Sides = { push: [], bare: [] };
  let [pushing, inserting] = [0, 0];
  for (let round = 0; round < warm + count; round += 1) {
    const work = trial.bare.map((_, client) => Array.from({ length: each }, () => next(client)));
    const pushed = await timed(work, (_, { batch }) => trial.store.push(batch));
    const inserted = await timed(work, (client, { rows }) => trial.bare[client]?.insert(rows));
    if (round < warm) continue;
    sides.push.push(...pushed.times);
    sides.bare.push(...inserted.times);
    pushing += pushed.whole;
    inserting += inserted.whole;
  }
  const ratio = inserting / pushing;
  console.log(lineOf(trial, sides, { pushing, inserting, ratio }));
  return { name: trial.name, ratio, isJudged: trial.isJudged };
};

/** Which batch a client sends next: it goes round its companies, with a site of its own in each. */
const planOf = async ({ store, bare, companies }: Trial): Promise<(client: number) => Work> => {
  const maker = new BatchMaker();
  const all = Array.from({ length: companies }, () => crypto.randomUUID());
  for (const company of all) await store.begin(company);
  const hands = bare.map((_, client) =>
    all.map((__, at) => ({
      company: all[(at + client * 6) % companies] ?? '',
      stream: crypto.randomUUID(),
      device: crypto.randomUUID(),
    })),
  );
  const turns = bare.map(() => 0);
  return (client) => {
    const turn = turns[client] ?? 0;
    turns[client] = turn + 1;
    const hand = hands[client]?.[turn % companies];
    if (hand === undefined) throw new RangeError(`there is no client ${client}`);
    return maker.next(hand.company, hand.stream, hand.device);
  };
};

/** All clients at once, each one batch after another. */
const timed = async (
  work: readonly (readonly Work[])[],
  act: (client: number, one: Work) => Promise<unknown> | undefined,
): Promise<{ readonly whole: number; readonly times: readonly number[] }> => {
  const times: number[] = [];
  const start = performance.now();
  await Promise.all(
    work.map(async (batches, client) => {
      for (const one of batches) {
        const from = performance.now();
        await act(client, one);
        times.push(performance.now() - from);
      }
    }),
  );
  return { whole: performance.now() - start, times };
};

const lineOf = (
  { name }: Trial,
  { push, bare }: Sides,
  { pushing, inserting, ratio }: Readonly<Record<'pushing' | 'inserting' | 'ratio', number>>,
): string => {
  const perSecond = (count: number, ms: number): string => ((count / ms) * 1000).toFixed(0);
  const columns = [
    perSecond(push.length, pushing),
    perSecond(bare.length, inserting),
    ratio.toFixed(2),
    percentile(push, 0.99).toFixed(1),
    percentile(bare, 0.99).toFixed(1),
  ];
  return `${name.padEnd(40)}${columns.map((it) => it.padStart(9)).join('')}`;
};

const percentile = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.ceil(times.length * share) - 1] ?? Number.NaN;
