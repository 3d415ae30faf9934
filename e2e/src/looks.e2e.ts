import assert from 'node:assert/strict';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import type { Page } from 'playwright-core';
import { type AppServer, serveApp } from './app-server.ts';
import { desk, openProfile, type Profile, phone, type Viewport } from './browser.ts';
import { beginVisit, stageNames } from './steps.ts';

let server: AppServer;
let folder: string;
let profile: Profile;
let visit = '';
let axe = '';
const ends: (() => Promise<void>)[] = [];

before(async () => {
  server = await serveApp();
  folder = await mkdtemp(join(tmpdir(), 'field-app-'));
  /* What a hook registers ends with the hook; this browser is there for all tests of the file. */
  profile = await openProfile({ after: (end) => void ends.push(end) }, folder);
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
  await profile.page.goto(server.url);
  await beginVisit(profile.page, 'Quarry Lane Kitchen');
  visit = profile.page.url();
});

after(async () => {
  for (const end of ends) await end();
  await server.close();
  await rm(folder, { recursive: true, force: true });
});

const own = (): readonly string[] => [
  server.url,
  `${server.url}new`,
  `${server.url}reading`,
  `${server.url}preferences`,
  `${server.url}record`,
  visit,
];

const all = (): readonly string[] => [
  ...own(),
  ...[...stageNames, 'leave-safe', 'cutaway'].map((id) => `${visit}/${id}`),
];

const goTo = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await page.locator('h1').first().waitFor();
  await page.waitForTimeout(150);
};

const faultsOn = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axe);
  const found: unknown = await page.evaluate(
    `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }).then((r) => r.violations.map((v) => v.id + ': ' + v.nodes.slice(0, 3).map((n) => n.target.join(' ')).join(' | ')))`,
  );
  return Array.isArray(found) ? found.map(String) : ['axe did not run'];
};

/** Long enough that nothing lies half under the actions, where a target would be measured by what is left of it. */
const views: readonly (readonly [string, Viewport])[] = [
  ['phone', { ...phone, height: 3000 }],
  ['desk', { ...desk, height: 3000 }],
];

for (const theme of ['light', 'dark', 'contrast'] as const)
  for (const [name, size] of views)
    test(`axe finds nothing in ${theme} on the ${name}`, { timeout: 240_000 }, async () => {
      const { page } = profile;
      await page.setViewportSize(size);
      const faults: string[] = [];
      for (const address of all()) {
        await goTo(page, address);
        await page.evaluate((value) => document.documentElement.setAttribute('data-theme', value), theme);
        faults.push(...(await faultsOn(page)).map((fault) => `${address.slice(server.url.length)} ${fault}`));
      }
      assert.deepEqual(faults, []);
    });

for (const text of ['usual', 'large', 'largest'] as const)
  test(`nothing is wider than a screen of 320 px in ${text} text`, { timeout: 120_000 }, async () => {
    const { page } = profile;
    await page.setViewportSize({ width: 320, height: 640 });
    const wide: string[] = [];
    for (const address of all()) {
      await goTo(page, address);
      await page.evaluate((value) => document.documentElement.setAttribute('data-text', value), text);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) wide.push(`${address.slice(server.url.length)} by ${over} px`);
    }
    assert.deepEqual(wide, []);
  });

test('nothing complained while all of that was looked at', () => {
  assert.deepEqual(profile.complaints, []);
});
