import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { dataPlace, type Serving, serve } from '@brinewright/server';
import { openProfile, type Profile } from './browser.ts';
import { stageNames } from './steps.ts';

/* The demo on the workshop's own server, at phone size: every visit opens at every stage, and says what it should. */

let serving: Serving;
let folder: string;
let profile: Profile;
const ends: (() => Promise<void>)[] = [];

before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'field-demo-'));
  serving = await serve({
    data: dataPlace({}, { data: join(folder, 'workshop.sqlite') }),
    demo: true,
    port: 0,
    equipment: [],
    languageDefault: 'en',
    logLevel: 'silent',
  });
  profile = await openProfile({ after: (end) => void ends.push(end) }, join(folder, 'profile'));
  await profile.page.goto(`${serving.url}/demo/app/`);
  await profile.page.getByRole('link', { name: /Hotel Marchbank/u }).waitFor();
});

after(async () => {
  for (const end of ends) await end();
  await serving.close();
  await rm(folder, { recursive: true, force: true });
});

const visits = ['laundry-fast', 'laundry-slow', 'hotel', 'look-alike', 'iron-well', 'undescribed'] as const;

const addressOf = async (visit: string): Promise<string> => {
  const { page } = profile;
  await page.goto(`${serving.url}/demo/app/`);
  const link = page.locator(`a[href$="/${visit}"]`).first();
  await link.waitFor();
  return new URL((await link.getAttribute('href')) ?? '', serving.url).href;
};

for (const visit of visits)
  test(`the visit ${visit} opens at every stage`, { timeout: 120_000 }, async () => {
    const { page, complaints } = profile;
    const address = await addressOf(visit);
    for (const stage of [...stageNames, 'cutaway', 'leave-safe']) {
      await page.goto(`${address}/${stage}`);
      await page.locator('h1').first().waitFor();
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.equal(over, 0, `${stage} is ${over} px too wide`);
    }
    assert.deepEqual(complaints, []);
  });

/** What the demo is about, told by its own screens. */
const told = [
  ['laundry-fast', 'find', /refill/iu],
  ['laundry-slow', 'find', /drain/iu],
  ['hotel', 'find', /seal 3/iu],
  ['look-alike', 'recognise', /remain/iu],
  ['hotel', 'program', /lb\/ft³/u],
  ['undescribed', 'program', /min/u],
] as const;

for (const [visit, stage, words] of told)
  test(`the visit ${visit} says at ${stage} what it is about`, { timeout: 60_000 }, async () => {
    const { page } = profile;
    await page.goto(`${await addressOf(visit)}/${stage}`);
    await page.locator('main').getByText(words).first().waitFor();
  });

test('a setting keyed in here is at the server', { timeout: 60_000 }, async () => {
  const { page } = profile;
  await page.goto(`${await addressOf('laundry-fast')}/program`);
  await page.getByRole('button', { name: 'Keyed in as set' }).click();
  await page.waitForFunction(
    async (url) => {
      const stream = location.pathname.split('/')[4];
      const answer = await fetch(`${url}/demo/api/visits/${stream}/laundry-fast`);
      const visit: unknown = await answer.json();
      return JSON.stringify(visit).includes('"set":{');
    },
    serving.url,
    { polling: 500 },
  );
});
