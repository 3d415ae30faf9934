import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoText } from '../../test/trial.ts';
import { migratePostgres } from '../store/index.ts';
import { withCluster } from '../testing/with-cluster.ts';
import { dataPlace } from '../workshop/data-place.ts';
import { type Serving, serve } from './serve.ts';

withCluster('a workshop server on PostgreSQL', (cluster) => {
  let folder = '';
  let serving: Serving | undefined;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'brinewright-pg-'));
    await migratePostgres(cluster().url('owner'), 'app');
    serving = await serve({
      data: dataPlace({}, { data: join(folder, 'beside'), databaseUrl: cluster().url('app') }),
      demo: false,
      port: 0,
      equipment: [],
      languageDefault: 'en',
      logLevel: 'silent',
    });
  });
  afterAll(async () => {
    await serving?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('it serves as on a file, says 503 while the database is killed, and goes on when that is back', async () => {
    const { url } = serving ?? { url: '' };
    const body = new URLSearchParams({ author: 'Dana Whitlock', name: 'Whitlock Water' });
    await fetch(`${url}/own/begin`, { method: 'POST', body, redirect: 'manual' });
    const add = (id: string) =>
      fetch(`${url}/own/api/visits`, {
        method: 'POST',
        headers: { 'content-type': 'application/yaml' },
        body: demoText('hotel').replace('id: hotel', `id: ${id}`),
      });
    expect((await add('first')).status).toBe(201);
    expect((await fetch(`${url}/ready`)).status).toBe(200);
    await cluster().kill();
    const away = await fetch(`${url}/own/api/visits`);
    expect([away.status, away.headers.get('retry-after')]).toEqual([503, '5']);
    expect((await add('second')).status).toBe(503);
    expect((await fetch(`${url}/ready`)).status).toBe(503);
    expect((await fetch(`${url}/health`)).status).toBe(200);
    cluster().startAgain();
    await expect.poll(async () => (await fetch(`${url}/ready`)).status, { timeout: 15_000 }).toBe(200);
    expect((await add('second')).status).toBe(201);
    const visits = await (await fetch(`${url}/own/api/visits`)).json();
    expect(JSON.stringify(visits)).toMatch(/"visit":"second".*"visit":"first"/u);
  });
});
