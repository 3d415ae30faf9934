import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTrial, type Trial } from '../../test/trial.ts';
import { type AppFiles, readAppFiles } from './app-files.ts';

const fileOf = (type: string, text: string) => ({ type, bytes: Buffer.from(text), zipped: Buffer.from('z') });
const app: AppFiles = new Map([
  ['index.html', fileOf('text/html; charset=utf-8', '<base href="./" /><p>app</p>')],
  ['assets/main-1a2b.js', fileOf('text/javascript; charset=utf-8', 'console.log(1)')],
  ['sw.js', fileOf('text/javascript; charset=utf-8', 'self.x = 1')],
]);

let trial: Trial;
beforeEach(async () => {
  trial = await openTrial({ demo: true, app });
  await trial.house.begin('Dana Whitlock', 'Whitlock Water');
});
afterEach(() => trial.close());

const get = (url: string, headers: Readonly<Record<string, string>> = {}) =>
  trial.listen('loopback').inject({ url, headers: { host: 'localhost:80', ...headers } });

test.each(['/own/app/', '/own/app/visit/a/b/find', '/demo/app/'])(
  'gives the page at %s, its base in full',
  async (url) => {
    const answer = await get(url);
    expect(answer.statusCode).toBe(200);
    expect(answer.body).toContain(`<base href="${url.slice(0, url.indexOf('/app/'))}/app/"`);
    expect(answer.headers['content-security-policy']).toContain("script-src 'self'");
    expect(answer.headers['content-security-policy']).toMatch(/script-src 'self';.*style-src 'self';/u);
  },
);

test('keeps files whose name changes with them, and asks each time for the others', async () => {
  const [asset, worker] = [await get('/own/app/assets/main-1a2b.js'), await get('/own/app/sw.js')];
  expect(asset.headers['cache-control']).toContain('immutable');
  expect(worker.headers['cache-control']).toBe('no-cache');
  expect(worker.headers['content-type']).toBe('text/javascript; charset=utf-8');
});

test('sends it zipped to who can read that', async () => {
  const answer = await get('/own/app/sw.js', { 'accept-encoding': 'br, gzip' });
  expect([answer.headers['content-encoding'], answer.rawPayload.toString()]).toEqual(['gzip', 'z']);
});

test.each(['/own/app/assets/other.js', '/own/app/..%2f..%2fpackage.json', '/own/app/%2e%2e/secret.txt'])(
  'has nothing at %s',
  async (url) => {
    expect((await get(url)).statusCode).toBe(404);
  },
);

test('says for whom a connection speaks', async () => {
  const own = trial.house.own();
  expect((await get('/own/api/session')).json()).toEqual({
    company: own?.company,
    author: 'Dana Whitlock',
    isOwner: true,
  });
});

test('is read from the folder it was built into, and is absent where it was not', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'bw-app-'));
  expect(await readAppFiles(folder)).toBeUndefined();
  writeFileSync(join(folder, 'index.html'), '<p>app</p>');
  const files = await readAppFiles(folder);
  expect(files?.get('index.html')?.bytes.toString()).toBe('<p>app</p>');
  rmSync(folder, { recursive: true });
});
