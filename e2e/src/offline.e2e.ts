import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { type AppServer, serveApp } from './app-server.ts';
import { openProfile } from './browser.ts';
import { beginVisit, shellIsKept, stageNames, tellComplaint } from './steps.ts';

let server: AppServer;
let folder: string;

before(async () => {
  server = await serveApp();
  folder = await mkdtemp(join(tmpdir(), 'field-app-'));
});

after(async () => {
  await server.close();
  await rm(folder, { recursive: true, force: true });
});

test('a visit begun without a network is all there after the battery died', {
  timeout: 120_000,
}, async (trial) => {
  const first = await openProfile(trial, folder);
  await first.page.goto(server.url);
  await shellIsKept(first.page);
  server.cut(true);
  await first.context.setOffline(true);

  await first.page.reload();
  await beginVisit(first.page, 'Quarry Lane Kitchen');
  await tellComplaint(first.page, 'Towels come out stiff');
  await first.page.getByLabel('Who worked on it last').fill('Pell & Daug');
  const address = first.page.url();
  assert.deepEqual(first.complaints, []);
  await first.kill();

  const second = await openProfile(trial, folder);
  await second.context.setOffline(true);
  await second.page.goto(address);
  await second.page.getByText('“Towels come out stiff”').waitFor();
  assert.equal(await second.page.getByLabel('Who worked on it last').inputValue(), 'Pell & Daug');
  for (const stage of stageNames) {
    await second.page.goto(`${address}/${stage}`);
    await second.page.locator('h1').first().waitFor();
  }
  await second.page.goto(server.url);
  await second.page.getByText('“Towels come out stiff”').waitFor();
  assert.deepEqual(second.complaints, []);
});
