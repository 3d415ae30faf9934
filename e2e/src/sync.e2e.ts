import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { dataPlace, type Serving, serve } from '@brinewright/server';
import type { Page } from 'playwright-core';
import { type AppServer, serveApp } from './app-server.ts';
import { openProfile } from './browser.ts';
import { beginVisit, shellIsKept, tellComplaint } from './steps.ts';

let workshop: Serving;
let server: AppServer;
let folder: string;

before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'field-app-'));
  workshop = await serve({
    data: dataPlace({}, { data: join(folder, 'record.sqlite') }),
    demo: true,
    port: 0,
    equipment: [],
    languageDefault: 'en',
    logLevel: 'silent',
  });
  server = await serveApp({ prefix: '/demo', company: await companyOf(), behind: workshop.url });
});

after(async () => {
  await server.close();
  await workshop.close();
  await rm(folder, { recursive: true, force: true });
});

const json = async (path: string): Promise<unknown> =>
  (await fetch(`${workshop.url}/demo/api${path}`)).json();

const companyOf = async (): Promise<string> => {
  const bundle = await json('/export.json');
  return typeof bundle === 'object' && bundle !== null && 'company' in bundle ? String(bundle.company) : '';
};

const isSent = (page: Page) =>
  page.getByRole('link', { name: 'Sent', exact: true }).waitFor({ timeout: 30_000 });

test('what is entered on one device is at the server and on another without being asked', {
  timeout: 180_000,
}, async (trial) => {
  const one = await openProfile(trial, join(folder, 'one'));
  await one.page.goto(server.url);
  await isSent(one.page);
  const other = await openProfile(trial, join(folder, 'other'));
  await other.page.goto(server.url);
  await isSent(other.page);

  await beginVisit(one.page, 'Quarry Lane Kitchen');
  await tellComplaint(one.page, 'Towels come out stiff');
  const png =
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==';
  await one.page
    .getByLabel('Take: Label of the unit')
    .setInputFiles({ name: 'label.png', mimeType: 'image/png', buffer: Buffer.from(png, 'base64') });
  await one.page.getByText('one photo').waitFor();
  await isSent(one.page);

  const sites = JSON.stringify(await json('/sites'));
  assert.match(sites, /Quarry Lane Kitchen/u);
  await other.page.getByText('“Towels come out stiff”').waitFor({ timeout: 30_000 });
  assert.deepEqual([...one.complaints, ...other.complaints], []);
});

test('a server that comes back gets what was written while it was away', {
  timeout: 120_000,
}, async (trial) => {
  const { page } = await openProfile(trial, join(folder, 'away'));
  await page.goto(server.url);
  await shellIsKept(page);
  await isSent(page);
  server.cut(true);
  await beginVisit(page, 'Aldmoor Farm Shop');
  await page.getByRole('link', { name: 'On this device' }).waitFor();
  assert.doesNotMatch(JSON.stringify(await json('/sites')), /Aldmoor/u);
  server.cut(false);
  await isSent(page);
  assert.match(JSON.stringify(await json('/sites')), /Aldmoor/u);
});
