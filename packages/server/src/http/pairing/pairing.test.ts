import type { InjectOptions, LightMyRequestResponse } from 'fastify';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoText, openTrial, type Trial } from '../../../test/trial.ts';
import type { buildServer } from '../build-server.ts';

const authority = '-----BEGIN CERTIFICATE-----\nnot a real one\n-----END CERTIFICATE-----\n';

let trial: Trial;
let lan: ReturnType<typeof buildServer>;
let owner: ReturnType<typeof buildServer>;
beforeEach(async () => {
  trial = await openTrial({
    demo: true,
    lan: { urls: ['https://192.0.2.7:4443'], fingerprint: 'AA:BB', authority },
  });
  lan = trial.listen('lan');
  owner = trial.listen('loopback');
});
afterEach(() => trial.close());

const ask = (request: InjectOptions): Promise<LightMyRequestResponse> => lan.inject(request);
const begin = () => trial.house.begin('Dana Whitlock', 'Whitlock Water');
const pair = (code: string, remoteAddress = '192.0.2.50') =>
  ask({ method: 'POST', url: '/pair', payload: { code, name: 'Ines, phone' }, remoteAddress });
const withKey = (key: string, url = '/own/api/sites') =>
  ask({ method: 'GET', url, headers: { authorization: `Bearer ${key}` } });
const paired = async (): Promise<{ readonly device: string; readonly key: string }> =>
  (await pair(trial.house.code.draw())).json();

test('a device that enters the code is let in by its key, which is kept nowhere here', async () => {
  const { company } = await begin();
  const answer = await pair(trial.house.code.draw());
  expect(answer.statusCode).toBe(201);
  const { key, device } = answer.json();
  expect(Buffer.from(key, 'base64url')).toHaveLength(32);
  expect((await withKey(key)).statusCode).toBe(200);
  const [kept] = await trial.own.store.devices(company);
  expect(kept).toMatchObject({ id: device, name: 'Ines, phone', revokedAt: undefined });
  expect(JSON.stringify(kept)).not.toContain(key);
});

test('a browser gets the key as a cookie that no page can read and no other site can use', async () => {
  await begin();
  const code = trial.house.code.draw();
  const answer = await ask({
    method: 'POST',
    url: '/pair',
    payload: `code=${code.toLowerCase().replace('-', ' ')}&name=Ines`,
    headers: { 'content-type': 'application/x-www-form-urlencoded' },
  });
  expect(answer.statusCode).toBe(303);
  const cookie = String(answer.headers['set-cookie']);
  for (const part of ['__Host-bw-device=', 'HttpOnly', 'Secure', 'SameSite=Strict', 'Path=/'])
    expect(cookie).toContain(part);
  const value = cookie.split(';')[0] ?? '';
  expect((await ask({ method: 'GET', url: '/own/', headers: { cookie: value } })).statusCode).toBe(200);
});

test('without a key nothing but the door is answered', async () => {
  await begin();
  for (const url of ['/own/api/sites', '/own/api/export.json', '/own/api/sync/events', '/own/', '/']) {
    const answer = await ask({ method: 'GET', url });
    expect([url, answer.statusCode]).toEqual([url, url.includes('api') ? 401 : 303]);
  }
  expect((await ask({ method: 'GET', url: '/own/api/sites' })).headers['www-authenticate']).toBe('Bearer');
  expect((await withKey('x'.repeat(43))).statusCode).toBe(401);
  for (const url of ['/pair', '/look.css', '/health', '/ready'])
    expect([url, (await ask({ method: 'GET', url })).statusCode]).toEqual([url, 200]);
  expect((await ask({ method: 'GET', url: '/ca.crt' })).body).toBe(authority);
});

test('the demo and what is the owner’s are not there for devices', async () => {
  await begin();
  const { key } = await paired();
  expect((await withKey(key, '/demo/api/sites')).statusCode).toBe(404);
  expect((await withKey(key, '/demo/')).statusCode).toBe(404);
  for (const url of ['/code', '/own/begin', `/devices/${crypto.randomUUID()}/revoke`]) {
    const headers = { authorization: `Bearer ${key}` };
    expect((await ask({ method: 'POST', url, headers })).statusCode).toBe(404);
  }
});

test('a code is good once, and a new one makes the old one void', async () => {
  await begin();
  const first = trial.house.code.draw();
  expect((await pair(first)).statusCode).toBe(201);
  expect((await pair(first)).json().type).toBe('/problems/no-code');
  const old = trial.house.code.draw();
  trial.house.code.draw();
  expect((await pair(old)).json().type).toBe('/problems/wrong-code');
});

test('a code is good for ten minutes', async () => {
  await begin();
  const code = trial.house.code.draw();
  trial.clock.now = new Date(trial.clock.now.getTime() + 10 * 60_000);
  expect((await pair(code)).json().type).toBe('/problems/no-code');
});

test('five wrong tries a minute from one address, ten in all', async () => {
  await begin();
  const code = trial.house.code.draw();
  const types = async (address: string, count: number): Promise<readonly string[]> => {
    const found: string[] = [];
    for (let tried = 0; tried < count; tried += 1)
      found.push((await pair('22222-22222', address)).json().type.replace('/problems/', ''));
    return found;
  };
  expect(await types('192.0.2.1', 6)).toEqual([...Array(5).fill('wrong-code'), 'too-many']);
  expect((await pair(code, '192.0.2.1')).statusCode).toBe(429);
  expect(await types('192.0.2.2', 6)).toEqual([...Array(5).fill('wrong-code'), 'too-many']);
  expect((await pair(code, '192.0.2.3')).json().type).toBe('/problems/no-code');
  trial.clock.now = new Date(trial.clock.now.getTime() + 61_000);
  expect((await pair(trial.house.code.draw(), '192.0.2.1')).statusCode).toBe(201);
});

test('codes are drawn from letters and figures that cannot be confused', () => {
  const drawn = Array.from({ length: 50 }, () => trial.house.code.draw());
  for (const code of drawn) expect(code).toMatch(/^[2-9A-HJKMNP-RT-Z]{5}-[2-9A-HJKMNP-RT-Z]{5}$/u);
  expect(new Set(drawn).size).toBe(50);
});

test('a device that is let in no more gets 401, listed with when that was', async () => {
  await begin();
  const { key, device } = await paired();
  const { statusCode } = await owner.inject({ method: 'POST', url: `/devices/${device}/revoke` });
  expect(statusCode).toBe(303);
  expect((await withKey(key)).statusCode).toBe(401);
  const start = await owner.inject({ method: 'GET', url: '/' });
  expect(start.body).toContain('Ines, phone');
  expect(start.body).toContain('Not let in since');
});

test('nobody can join before the workshop is begun', async () => {
  expect((await pair(trial.house.code.draw())).json().type).toBe('/problems/not-begun');
  expect((await owner.inject({ method: 'POST', url: '/code' })).statusCode).toBe(409);
});

test('what a device brings carries its name as author and its id as pusher, and it may not redact for others', async () => {
  const { company } = await begin();
  const { key, device } = await paired();
  const headers = { authorization: `Bearer ${key}`, 'content-type': 'application/yaml' };
  const answer = await ask({ method: 'POST', url: '/own/api/visits', headers, payload: demoText('hotel') });
  expect(answer.statusCode).toBe(201);
  const { entries } = await trial.own.store.pull(company, { all: 0 }, 500);
  expect(entries.at(-1)?.entry.author).toBe('Ines, phone');
  const [first] = entries;
  if (first === undefined) throw new Error('nothing on record');
  const redaction = {
    ...first.entry,
    id: crypto.randomUUID(),
    device: crypto.randomUUID(),
    seq: 1,
    lamport: 9_000,
    kind: 'redacted/1',
    payload: { target: first.entry.id, reason: 'mischief' },
  };
  const push = (payload: object) =>
    ask({
      method: 'POST',
      url: '/own/api/sync/push',
      headers: { authorization: `Bearer ${key}` },
      payload,
    });
  expect((await push({ entries: [{ entry: redaction }] })).json().verdicts).toMatchObject([
    { state: 'refused', reason: 'not-owner' },
  ]);
  const note = { ...redaction, kind: 'visit-noted/1', payload: { note: 'x' } };
  await push({ entries: [{ entry: note }] });
  expect((await trial.own.store.find(company, note.id))?.pusher).toBe(device);
});

test('the owner draws a code on the start page and sees address, fingerprint and certificate there', async () => {
  await begin();
  await owner.inject({ method: 'POST', url: '/code' });
  const { body } = await owner.inject({ method: 'GET', url: '/' });
  const { code } = trial.house.code.current() ?? { code: 'none' };
  for (const shown of [code, 'https://192.0.2.7:4443/pair', 'https://192.0.2.7:4443/ca.crt', 'AA'])
    expect(body).toContain(shown);
});
