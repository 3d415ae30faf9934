import type { InjectOptions, LightMyRequestResponse } from 'fastify';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoText, fromAfar, openTrial, type Trial } from '../../test/trial.ts';
import type { buildServer } from '../http/build-server.ts';
import type { Workshop } from '../workshop/workshop.ts';

let trial: Trial;
let app: ReturnType<typeof buildServer>;
let demo: Workshop;
let stream = '';
beforeAll(async () => {
  trial = await openTrial({ demo: true });
  app = trial.listen('loopback');
  if (trial.house.demo === undefined) throw new Error('no demo');
  demo = trial.house.demo;
  const site = (await demo.sites()).find(({ folded }) => folded.site?.name === 'Hotel Marchbank');
  stream = site?.stream ?? '';
  const say = (refill: string, author: string) => ({
    kind: 'setting-set/1',
    payload: { refill },
    about: { visit: 'hotel', conditioner: 's1' },
    author,
  });
  const entries = [
    await fromAfar(demo, stream, crypto.randomUUID(), 1, say('18 min', 'Ines Marlow')),
    await fromAfar(demo, stream, crypto.randomUUID(), 1, say('20 min', 'Tomás Arrieta')),
    await fromAfar(demo, stream, crypto.randomUUID(), 1, {
      kind: 'hologram-taken/3',
      payload: {},
      about: { visit: 'hotel' },
      author: 'Somebody newer',
    }),
  ];
  await demo.push({ pusher: 'workshop', isOwner: true }, { entries: entries.map((entry) => ({ entry })) });
});
afterAll(() => trial.close());

const ask = (request: InjectOptions): Promise<LightMyRequestResponse> => app.inject(request);
const page = async (url: string, headers: Record<string, string> = {}): Promise<string> => {
  const answer = await ask({ method: 'GET', url, headers: { accept: 'text/html', ...headers } });
  expect([url, answer.statusCode]).toEqual([url, 200]);
  expect(answer.headers['content-type']).toContain('text/html');
  return answer.body;
};
const post = (url: string, fields: Record<string, string>) =>
  ask({
    method: 'POST',
    url,
    payload: new URLSearchParams(fields).toString(),
    headers: { 'content-type': 'application/x-www-form-urlencoded', accept: 'text/html' },
  });

const addresses = (): readonly string[] => [
  '/',
  '/own/begin',
  '/demo/',
  '/demo/remarks',
  `/demo/sites/${stream}`,
  `/demo/units/${stream}/s1`,
  `/demo/visits/${stream}/hotel`,
  `/demo/visits/${stream}/hotel/report`,
  `/demo/visits/${stream}/hotel/sheet`,
  `/demo/visits/${stream}/hotel/card`,
  `/demo/visits/${stream}/hotel/cutaway`,
  `/demo/visits/${stream}/hotel/cutaway?stop=backwash&torn=5`,
  `/demo/visits/${stream}/hotel/cutaway?stop=nonsense&torn=x`,
  '/problems/visit-faulty',
];

describe.each(['en', 'es'])('every page in %s', (language) => {
  test('has all its words, one heading of the first rank, and no script', async () => {
    for (const url of addresses()) {
      const body = await page(`${url}${url.includes('?') ? '&' : '?'}lang=${language}`);
      expect(body).toContain(`<html lang="${language}">`);
      expect(body).not.toMatch(/[‹›]|undefined|\[object|<script| on\w+=/u);
      expect([url, body.match(/<h1\b/gu)?.length]).toEqual([url, 1]);
      expect(body).toMatch(/<title>[^<]+<\/title>/u);
    }
  });
});

test('a language that was chosen stays chosen, and beats what the browser says', async () => {
  const chosen = await ask({ method: 'GET', url: '/?lang=es&system=metric' });
  const cookies = [chosen.headers['set-cookie']].flat().map((one) => String(one).split(';')[0]);
  expect(cookies).toEqual(['bw-lang=es', 'bw-system=metric']);
  const body = await page('/', { cookie: cookies.join('; '), 'accept-language': 'en' });
  expect(body).toContain('<html lang="es">');
  expect(body).toMatch(/aria-current="true"[^>]*>métricas/u);
});

test('the links that choose a language keep what else was chosen', async () => {
  const body = await page(`/demo/visits/${stream}/hotel/cutaway?stop=refill&torn=2`);
  expect(body).toContain('stop=refill&amp;torn=2&amp;lang=es');
});

test('the cutaway is drawn at the stop asked for, torn where the diagnosis says so or the reader does', async () => {
  const address = `/demo/visits/${stream}/hotel/cutaway`;
  expect(await page(`${address}?stop=brine`)).toContain('Seal 3 is torn');
  expect(await page(`${address}?stop=brine&torn=none`)).not.toContain('is torn;');
  expect(await page(`${address}?stop=backwash`)).toContain('At the backwash stop');
});

test('rivals are shown with both values and who said them; the one chosen counts', async () => {
  const body = await page(`/demo/sites/${stream}`);
  for (const text of ['18 min', '20 min', 'Ines Marlow', 'Tomás Arrieta', 'hologram-taken/3'])
    expect(body).toContain(text);
  const rival = (await demo.site(stream))?.rivals[0];
  const loser = rival?.values[1];
  if (rival === undefined || loser === undefined) throw new Error('no rival');
  const fields = {
    entry: loser.entry,
    kind: rival.kind,
    what: rival.what,
    visit: 'hotel',
    conditioner: 's1',
  };
  const settled = await post(`/demo/sites/${stream}/settle`, fields);
  expect([settled.statusCode, settled.headers.location]).toEqual([303, `/demo/sites/${stream}`]);
  expect(await page(`/demo/sites/${stream}`)).not.toContain('Let the chosen value count');
  const again = await post(`/demo/sites/${stream}/settle`, fields);
  expect(again.statusCode).toBe(409);
  expect(again.body).toContain('Nothing was settled');
});

const upload = (url: string, name: string, text: string) => {
  const edge = '----edge';
  const payload = `--${edge}\r\ncontent-disposition: form-data; name="file"; filename="${name}"\r\ncontent-type: text/plain\r\n\r\n${text}\r\n--${edge}--\r\n`;
  const headers = { 'content-type': `multipart/form-data; boundary=${edge}`, accept: 'text/html' };
  return ask({ method: 'POST', url, payload, headers });
};

test('a visit brought in by the form leads to its page; one with faults to a page that names them', async () => {
  const text = demoText('hotel').replace('id: hotel', 'id: brought');
  const taken = await upload('/demo/visits', 'C:\\papers\\brought.yaml', text);
  expect(taken.headers.location).toBe(`/demo/visits/${stream}/brought`);
  expect(await page(String(taken.headers.location))).toContain('Hotel Marchbank');
  const faulty = await upload('/demo/visits', 'f.yaml', text.replace('18 gpm', '18 apples'));
  expect(faulty.statusCode).toBe(422);
  expect(faulty.body).toContain('f.yaml, line');
  const none = await upload('/demo/visits', 'f.yaml', ' ');
  expect(none.body).toContain('Nothing was sent');
  const large = await upload('/demo/visits', 'f.yaml', `#${'x'.repeat(1_100_000)}`);
  expect(large.statusCode).toBe(413);
});

test('a definition brought in by the form is named among those in use', async () => {
  const family = 'family: own-one\ntitle: Own one\nsource: invented\nlike: stock/piston-five-step\n';
  const taken = await upload('/demo/definitions', 'own one.yaml', family);
  expect([200, 303]).toContain(taken.statusCode);
  expect(await page('/demo/')).toContain('own one.yaml');
});

test('text of people is text on the page, whatever it looks like', async () => {
  const text = demoText('iron-well')
    .replace('id: iron-well', 'id: hostile')
    .replace('name: Upper Fold Farm Shop', `name: '<script>alert(1)</script>"><img src=x>'`);
  const taken = await upload('/demo/visits', 'x.yaml', text);
  const to = String(taken.headers.location);
  for (const url of ['/demo/', to, `${to}/report`, `${to}/sheet`, `${to}/card`, `${to}/cutaway`]) {
    const body = await page(url);
    expect(body).not.toMatch(/<script|<img/u);
    expect(body).toContain('&lt;script&gt;');
  }
});

test('an own workshop is begun by a name, once; an empty one says what to do', async () => {
  expect((await ask({ method: 'GET', url: '/own/' })).headers.location).toBe('/own/begin');
  expect((await post('/own/begin', { author: '  ', name: '' })).statusCode).toBe(400);
  expect((await post('/own/begin', { author: 'Dana Whitlock', name: '' })).headers.location).toBe('/own/');
  const body = await page('/own/');
  expect(body).toContain('Workshop of Dana Whitlock');
  expect(body).toContain('No visits yet');
  expect((await post('/own/begin', { author: 'Another', name: '' })).statusCode).toBe(409);
  expect(await page('/')).toContain('Open the workshop');
});

test('an error on the way to a page is a page, in the reader’s language', async () => {
  const headers = { accept: 'text/html', 'accept-language': 'es' };
  const answer = await ask({ method: 'GET', url: '/demo/nowhere', headers });
  expect(answer.statusCode).toBe(404);
  expect(answer.body).toContain('No hay nada en esta dirección');
});
