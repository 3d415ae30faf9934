import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pullReply, readEntry } from '@brinewright/journal';
import { migratePostgres, openPostgres, openSqlite, type SqlStore } from '@brinewright/server/store';
import { failingDisk, failingQueries, NthFailure, serverOn, startCluster } from '@brinewright/server/testing';
import type { StoreName } from '../options.ts';
import { randomFrom } from '../random.ts';
import { ask, jsonIn } from './answers.ts';
import { failEach, type Tried } from './fail-each.ts';
import { fetchStep, pullStep, pushStep, type Step, type StepName, sendStep } from './steps.ts';

export type NthResult = {
  readonly store: StoreName;
  readonly step: StepName;
  /** What was made to fail. */
  readonly what: (typeof ways)[number];
} & Tried;

const ways = ['query', 'answer to a query', 'disk'] as const;

type Around = Parameters<typeof openSqlite>[1];

/** Opens a store whose queries can be made to fail; what it leaves is removed by `close`. */
type Opener = {
  readonly open: (around: Around) => Promise<SqlStore>;
  readonly close: () => void;
};

/** On one store: every query, every answer to one, and every call to the disk fails once in each step. */
export const runNthFailure = async (store: StoreName, seed: number): Promise<readonly NthResult[]> => {
  const results: NthResult[] = [];
  for (const what of ways) {
    const folder = mkdtempSync(join(tmpdir(), 'brinewright-nth-'));
    const opener = store === 'sqlite' ? sqliteIn(folder) : await postgresHere();
    try {
      results.push(...(await failOneWay(store, what, opener, join(folder, 'files'), seed)));
    } finally {
      opener.close();
      rmSync(folder, { recursive: true, force: true });
    }
  }
  return results;
};

const failOneWay = async (
  name: StoreName,
  what: NthResult['what'],
  opener: Opener,
  files: string,
  seed: number,
): Promise<readonly NthResult[]> => {
  const nth = new NthFailure();
  const around =
    what === 'disk' ? {} : { around: failingQueries(nth, what === 'query' ? 'before' : 'after') };
  const store = await opener.open(around);
  const server = await serverOn({
    store,
    files,
    around: (disk) => (what === 'disk' ? failingDisk(disk, nth) : disk),
  });
  try {
    const results: NthResult[] = [];
    for (const [step, newStep] of await stepsOf(server, seed))
      results.push({
        store: name,
        step,
        what,
        ...(await failEach(server, nth, newStep, `${name}, ${step}, ${what}`)),
      });
    return results;
  } finally {
    await server.close();
    await store.close();
  }
};

const stepsOf = async (
  server: Awaited<ReturnType<typeof serverOn>>,
  seed: number,
): Promise<readonly (readonly [StepName, () => Promise<Step> | Step])[]> => {
  const random = randomFrom(seed);
  const company = await begin(server);
  return [
    ['push', () => pushStep(random, company)],
    ['pull', pullStep],
    ['file sent', () => sendStep(random)],
    [
      'file fetched',
      async () => {
        const sent = sendStep(random);
        await ask(server, sent.request);
        return fetchStep(sent);
      },
    ],
  ];
};

const begin = async (server: Awaited<ReturnType<typeof serverOn>>): Promise<string> => {
  await ask(server, {
    method: 'POST',
    url: '/own/begin',
    payload: 'author=trial&name=Trial',
    type: 'application/x-www-form-urlencoded',
  });
  const [first] = pullReply.parse(jsonIn(await ask(server, pullStep().request))).entries;
  const read = first === undefined ? undefined : readEntry(first);
  if (read?.ok !== true) throw new Error('the workshop of the trial was not begun');
  return read.sealed.entry.company;
};

const sqliteIn = (folder: string): Opener => ({
  open: (around) => openSqlite(join(folder, 'workshop.sqlite'), around),
  close: () => undefined,
});

const postgresHere = async (): Promise<Opener> => {
  const cluster = await startCluster({ fsync: false });
  await migratePostgres(cluster.url('owner'), 'app');
  return {
    open: (around) => openPostgres(cluster.url('app'), { ...around, connections: 2 }),
    close: cluster.stop,
  };
};
