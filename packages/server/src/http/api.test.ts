import { createHash } from 'node:crypto';
import { parseVisit } from '@brinewright/service';
import type { InjectOptions, LightMyRequestResponse } from 'fastify';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { demoText, openTrial, type Trial } from '../../test/trial.ts';
import type { buildServer } from './build-server.ts';
import { problemBody } from './problem/problem-body.ts';

let trial: Trial;
let app: ReturnType<typeof buildServer>;
beforeAll(async () => {
  trial = await openTrial({ demo: true });
  app = trial.listen('loopback');
});
afterAll(() => trial.close());

const ask = (request: InjectOptions): Promise<LightMyRequestResponse> => app.inject(request);
const get = (url: string, headers: Record<string, string> = {}) => ask({ method: 'GET', url, headers });
const yaml = { 'content-type': 'application/yaml' };

const problem = (answer: LightMyRequestResponse): string => {
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect(answer.body).not.toMatch(/\.ts:\d|node_modules|Error:/u);
  const body = problemBody.parse(answer.json());
  expect(body.status).toBe(answer.statusCode);
  return body.type.replace('/problems/', '');
};

const lines = z.array(z.object({ stream: z.string(), visit: z.string(), unit: z.string() }));
const hotel = async () => {
  const found = lines.parse((await get('/demo/api/visits')).json()).find(({ visit }) => visit === 'hotel');
  if (found === undefined) throw new Error('no hotel');
  return found;
};

describe('what can be read', () => {
  test('six visits of the demo, newest first, each in its site', async () => {
    const visits = z.array(z.object({ date: z.string() })).parse((await get('/demo/api/visits')).json());
    const dates = visits.map(({ date }) => date);
    expect(dates).toHaveLength(6);
    expect(dates).toEqual(dates.toSorted().toReversed());
    expect((await get('/demo/api/sites')).json()).toHaveLength(6);
    expect((await get('/demo/api/units')).json().length).toBeGreaterThan(6);
  });

  test('a visit comes back as the document it was written as, in JSON and in YAML', async () => {
    const { stream } = await hotel();
    const document = (await get(`/demo/api/visits/${stream}/hotel`)).json();
    expect(document.supply.pressure).toBe('64 psi');
    const text = (await get(`/demo/api/visits/${stream}/hotel?format=yaml`)).body;
    const read = parseVisit('hotel.yaml', text);
    expect(read.ok && read.value.supply?.pressure?.value.as).toBe('64 psi');
    expect(read.issues).toEqual([]);
  });

  test('an assessment speaks the language that was asked for', async () => {
    const { stream } = await hotel();
    const english = await get(`/demo/api/visits/${stream}/hotel/assessment?effort=quick`);
    const spanish = await get(`/demo/api/visits/${stream}/hotel/assessment?effort=quick&lang=es`);
    expect(english.json().stages.diagnosis.state).toBe('done');
    expect(english.json().figures).toEqual(spanish.json().figures);
    expect(english.json().says.diagnosis).not.toEqual(spanish.json().says.diagnosis);
    expect(english.json().stages.situation.value.family).toBe('osier');
  });

  test('a site, a unit’s history, stock and parts used have their answers', async () => {
    const { stream, unit } = await hotel();
    expect((await get(`/demo/api/sites/${stream}`)).json()).toMatchObject({
      site: { name: 'Hotel Marchbank' },
      rivals: [],
    });
    expect((await get(`/demo/api/units/${stream}/${unit}/history`)).json()).toMatchObject([
      { visit: 'hotel', date: '2026-11-25', by: 'Tomás Arrieta', isHandedOver: false },
    ]);
    expect((await get('/demo/api/stock')).json()).toEqual([]);
    expect((await get('/demo/api/parts-used')).json()).toEqual([]);
  });

  test('OpenAPI describes every route of both workshops', async () => {
    const api = (await get('/api/openapi.json')).json();
    expect(api.openapi).toBe('3.1.0');
    for (const path of ['/own/api/sync/push', '/demo/api/visits/{stream}/{visit}', '/own/api/import'])
      expect(Object.keys(api.paths)).toContain(path);
    expect(Object.keys(api.components.schemas)).toContain('VisitLine');
  });

  test('health says alive, ready says that the store answers', async () => {
    expect((await get('/health')).json()).toEqual({ state: 'alive' });
    expect((await get('/ready')).json()).toEqual({ state: 'ready' });
  });
});

describe('what goes wrong is a problem, never a stack trace', () => {
  const uuid = '00000000-0000-7000-8000-000000000001';
  test.each([
    ['GET', '/demo/api/nothing', 'not-found'],
    ['GET', `/demo/api/sites/${uuid}`, 'no-such-site'],
    ['GET', '/demo/api/sites/../../../etc/passwd', 'not-found'],
    ['GET', '/demo/api/sites/not-a-uuid', 'invalid'],
    ['GET', `/demo/api/visits/${uuid}/hotel`, 'no-such-site'],
    ['GET', '/demo/api/export/nonsense.csv', 'no-such-table'],
    ['GET', '/demo/api/export/__proto__.csv', 'no-such-table'],
    ['GET', `/demo/api/files/${'a'.repeat(64)}`, 'no-such-file'],
    ['GET', '/demo/api/files/..%2f..%2fetc%2fpasswd', 'invalid'],
    ['DELETE', '/demo/api/sites', 'wrong-method'],
    ['PUT', '/demo/api/sync/push', 'wrong-method'],
    ['GET', '/own/api/sites', 'not-begun'],
    ['GET', '/demo/api/%zz', 'bad-address'],
    ['GET', `/demo/api/sites/${'a'.repeat(2000)}`, 'bad-address'],
  ] as const)('%s %s is %s', async (method, url, expected) => {
    expect(problem(await ask({ method, url }))).toBe(expected);
  });

  test.each([
    ['{"entries": [', 'application/json', 'malformed-json'],
    ['', 'application/json', 'malformed-json'],
    ['{"entries": 7}', 'application/json', 'invalid'],
    ['{"entries": [], "more": 1}', 'application/json', 'invalid'],
    ['{"__proto__": {"a": 1}, "entries": []}', 'application/json', 'malformed-json'],
    ['entries=1', 'image/png', 'wrong-type'],
    [`{"entries": [${'[1],'.repeat(600)}[1]]}`, 'application/json', 'invalid'],
  ])('push of %j as %s is %s', async (payload, type, expected) => {
    const url = '/demo/api/sync/push';
    expect(problem(await ask({ method: 'POST', url, payload, headers: { 'content-type': type } }))).toBe(
      expected,
    );
  });

  test('a body larger than is taken says how large one may be', async () => {
    const payload = `# ${'x'.repeat(1024 * 1024)}`;
    const answer = await ask({ method: 'POST', url: '/demo/api/visits', payload, headers: yaml });
    expect(problem(answer)).toBe('too-large');
    expect(answer.json().detail).toContain('1 MB');
  });

  test('the sentences come in the language of who asks', async () => {
    const spanish = await get('/demo/api/nothing', { 'accept-language': 'fr, es-MX;q=0.8, en;q=0.5' });
    expect(spanish.json().title).toBe('No hay nada en esta dirección');
    const english = await get('/demo/api/nothing', { 'accept-language': 'de' });
    expect(english.json().title).toBe('Nothing at this address');
  });

  test('entries that are wrong in themselves are refused one by one, in their order', async () => {
    const payload = { entries: [{ entry: 'text' }, { entry: { id: 'x' } }, { entry: { deep: { er: 1 } } }] };
    const answer = await ask({ method: 'POST', url: '/demo/api/sync/push', payload });
    expect(answer.json().verdicts).toMatchObject([
      { state: 'refused', reason: 'malformed' },
      { state: 'refused', reason: 'malformed', id: 'x' },
      { state: 'refused', reason: 'malformed' },
    ]);
  });
});

describe('what is brought in', () => {
  test('a written visit answers with where it went; sent again it is there already', async () => {
    const payload = demoText('hotel').replace('id: hotel', 'id: hotel-2');
    const first = await ask({
      method: 'POST',
      url: '/demo/api/visits?name=mine.yaml',
      payload,
      headers: yaml,
    });
    expect(first.statusCode).toBe(201);
    expect(first.json()).toMatchObject({ stream: (await hotel()).stream, visit: 'hotel-2', issues: [] });
    const again = await ask({ method: 'POST', url: '/demo/api/visits', payload, headers: yaml });
    expect(problem(again)).toBe('visit-there');
  });

  test('a visit with faults names each with file, line and mend', async () => {
    const payload = demoText('hotel').replace('18 gpm', '18 apples').replace('124 degF', 'warm');
    const answer = await ask({
      method: 'POST',
      url: '/demo/api/visits?name=mine.yaml',
      payload,
      headers: yaml,
    });
    expect(problem(answer)).toBe('visit-faulty');
    expect(answer.json().issues).toMatchObject([{ file: 'mine.yaml' }, { file: 'mine.yaml' }]);
    expect(answer.json().issues[0].line).toBeGreaterThan(1);
    expect(answer.json().issues[0].mend).not.toBe('');
  });

  test('a definition sent as a visit, and a broken definition, say so', async () => {
    const family = 'family: f\ntitle: F\nsource: invented\nlike: stock/piston-five-step\n';
    const asVisit = await ask({ method: 'POST', url: '/demo/api/visits', payload: family, headers: yaml });
    expect(problem(asVisit)).toBe('is-definition');
    const url = '/demo/api/definitions?name=f.yaml';
    const broken = await ask({ method: 'POST', url, payload: `${family}nonsense: 1\n`, headers: yaml });
    expect(problem(broken)).toBe('definition-faulty');
    const good = await ask({ method: 'POST', url, payload: family, headers: yaml });
    expect(good.statusCode).toBe(201);
    const { file } = good.json();
    expect((await get(`/demo/api/files/${file}`)).body).toBe(family);
  });

  test.each(['../evil.yaml', 'a/b.yaml', '', '.hidden', 'x'.repeat(101)])(
    'a definition cannot be called %j',
    async (name) => {
      const url = `/demo/api/definitions?name=${encodeURIComponent(name)}`;
      expect(problem(await ask({ method: 'POST', url, payload: 'x: 1', headers: yaml }))).toBe('invalid');
    },
  );

  test('a file is taken when it is what its name says, and only then', async () => {
    const bytes = Buffer.from([0, 1, 2, 255]);
    const hash = createHash('sha256').update(bytes).digest('hex');
    const headers = { 'content-type': 'application/octet-stream' };
    const url = `/demo/api/files/${hash}`;
    const wrong = await ask({ method: 'PUT', url, payload: Buffer.from('other'), headers });
    expect(problem(wrong)).toBe('wrong-hash');
    expect(problem(await get(url))).toBe('no-such-file');
    expect((await ask({ method: 'PUT', url, payload: bytes, headers })).statusCode).toBe(204);
    const back = await get(url);
    expect(back.rawPayload.equals(bytes)).toBe(true);
    expect(back.headers['content-disposition']).toBe('attachment');
    expect(back.headers['x-content-type-options']).toBe('nosniff');
  });
});

describe('what is taken away', () => {
  test('the bundle holds every entry with its hash, and import knows them all', async () => {
    const bundle = (await get('/demo/api/export.json')).json();
    const { last } = (
      await ask({ method: 'POST', url: '/demo/api/sync/pull', payload: { follow: { all: 0 } } })
    ).json();
    expect(bundle.entries).toHaveLength(last);
    expect(bundle.entries.every(({ hash }: { hash: string }) => /^[0-9a-f]{64}$/u.test(hash))).toBe(true);
    const back = await ask({ method: 'POST', url: '/demo/api/import', payload: bundle });
    expect(back.json()).toEqual({ kept: 0, known: last, refused: [] });
  });

  test('a bundle of another company is refused entry by entry', async () => {
    const bundle = (await get('/demo/api/export.json')).json();
    for (const one of bundle.entries) {
      one.entry.company = crypto.randomUUID();
      delete one.hash;
    }
    const back = (await ask({ method: 'POST', url: '/demo/api/import', payload: bundle })).json();
    expect(back.kept).toBe(0);
    expect(new Set(back.refused.map(({ reason }: { reason: string }) => reason))).toEqual(
      new Set(['other-company']),
    );
  });

  test.each([
    ['sites', /^\ufeff?stream,name,address/u, 7],
    ['units', /^\ufeff?stream,site,unit/u, 8],
    ['visits', /complaint/u, 8],
    ['answers', /foot-letter/u, 30],
    ['readings', /0\.21 gpm/u, 20],
    ['settings', /found,backwash,10 min/u, 20],
    ['operations', /operation/u, 1],
    ['parts-used', /part,count/u, 1],
    ['proofs', /check/u, 1],
    ['stock', /place,part/u, 1],
    ['entries', /setting-found\/1/u, 100],
  ])('%s.csv', async (table, pattern, least) => {
    const answer = await get(`/demo/api/export/${table}.csv`);
    expect(answer.headers['content-type']).toContain('text/csv');
    expect(answer.body).toMatch(pattern);
    expect(answer.body.trim().split('\n').length).toBeGreaterThanOrEqual(least);
  });

  test('a cell that a spreadsheet would run as a formula is made text', async () => {
    const payload = demoText('iron-well')
      .replace('id: iron-well', 'id: formula')
      .replace(/name: Upper Fold Farm Shop/u, 'name: "=HYPERLINK(1)"');
    await ask({ method: 'POST', url: '/demo/api/visits', payload, headers: yaml });
    const { body } = await get('/demo/api/export/sites.csv');
    expect(body).toContain("'=HYPERLINK(1)");
    expect(body).not.toMatch(/(?:^|,)"?=HYPERLINK/mu);
  });
});

describe('who may ask', () => {
  test.each(['evil.example', 'evil.example:80', '127.0.0.1.evil.example', '[::1].evil', 'localhost@evil'])(
    'asked as %s, the loopback side does not answer',
    async (host) => {
      expect(problem(await get('/demo/api/sites', { host }))).toBe('wrong-host');
    },
  );

  test.each(['127.0.0.1', 'localhost:80', '[::1]:80'])('asked as %s, it does', async (host) => {
    expect((await get('/demo/api/sites', { host })).statusCode).toBe(200);
  });

  const push = (headers: Record<string, string>) =>
    ask({ method: 'POST', url: '/demo/api/sync/push', payload: { entries: [] }, headers });

  test('a page of another site cannot write here, our own and programs can', async () => {
    expect(problem(await push({ origin: 'https://evil.example' }))).toBe('other-origin');
    expect(problem(await push({ origin: 'null' }))).toBe('other-origin');
    expect(problem(await push({ 'sec-fetch-site': 'cross-site' }))).toBe('other-origin');
    expect(problem(await push({ 'sec-fetch-site': 'same-site' }))).toBe('other-origin');
    expect((await push({ origin: 'http://localhost', host: 'localhost' })).statusCode).toBe(200);
    expect((await push({ 'sec-fetch-site': 'same-origin' })).statusCode).toBe(200);
    expect((await push({})).statusCode).toBe(200);
  });

  test('answers carry a policy under which no script runs', async () => {
    const { headers } = await get('/demo/api/sites');
    expect(headers['content-security-policy']).toContain("default-src 'none'");
    expect(headers['content-security-policy']).not.toContain('script-src');
    expect(headers['x-frame-options']).toBe('DENY');
  });
});
