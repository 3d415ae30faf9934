import { afterEach, expect, test } from 'vitest';
import { openTrial, type Trial } from '../../test/trial.ts';
import { StoreFault } from '../store/index.ts';
import type { Kept } from '../workshop/open-house.ts';
import { loggerTo } from './logger.ts';

let trial: Trial | undefined;
afterEach(() => trial?.close());

/** A store behind a switch: while it is off, every question fails as the database's absence does. */
const switched = (code: 'store-away' | 'full') => {
  const state = { isOff: false };
  const around = ({ store, files }: Kept): Kept => ({
    files,
    store: new Proxy(store, {
      get: (target, name) => {
        const held: unknown = Reflect.get(target, name, target);
        if (typeof held !== 'function') return held;
        return (...given: readonly unknown[]) => {
          if (state.isOff && name !== 'close') return Promise.reject(new StoreFault(code, 'a database'));
          return held.apply(target, given);
        };
      },
    }),
  });
  return { state, around };
};

test('while the database is away all is answered with 503 and when to try again; then all goes on', async () => {
  const { state, around } = switched('store-away');
  trial = await openTrial({ around });
  await trial.house.begin('Dana Whitlock', 'Whitlock Water');
  const app = trial.listen('loopback');
  const get = (url: string, accept = 'application/json') =>
    app.inject({ method: 'GET', url, headers: { accept } });
  expect((await get('/own/api/visits')).statusCode).toBe(200);
  state.isOff = true;
  for (const url of ['/ready', '/own/api/visits', '/own/api/export.json', '/own/api/export/visits.csv']) {
    const answer = await get(url);
    expect([url, answer.statusCode, answer.headers['retry-after']]).toEqual([url, 503, '5']);
    expect(answer.json().type).toBe('/problems/away');
  }
  const push = { method: 'POST', url: '/own/api/sync/push', payload: { entries: [] } } as const;
  expect((await app.inject(push)).statusCode).toBe(503);
  expect((await get('/own/', 'text/html')).body).toContain('The database is away');
  expect((await get('/health')).statusCode).toBe(200);
  state.isOff = false;
  for (const url of ['/ready', '/own/api/visits', '/own/']) expect((await get(url)).statusCode).toBe(200);
  expect((await app.inject(push)).statusCode).toBe(200);
});

test('a full disk is said as such', async () => {
  const { state, around } = switched('full');
  trial = await openTrial({ around });
  await trial.house.begin('Dana Whitlock', 'Whitlock Water');
  const app = trial.listen('loopback');
  state.isOff = true;
  const answer = await app.inject({ method: 'POST', url: '/own/api/sync/push', payload: { entries: [] } });
  expect(answer.statusCode).toBe(507);
  expect(answer.json().type).toBe('/problems/full');
});

test('a mistake of ours says nothing of itself to who asked; the log has it, without keys and parameters', async () => {
  trial = await openTrial({
    around: ({ store, files }) => ({
      files,
      store: new Proxy(store, {
        get: (target, name) => {
          if (name === 'pull') return () => Promise.reject(new TypeError('secret detail'));
          const held: unknown = Reflect.get(target, name, target);
          return typeof held === 'function' ? held.bind(target) : held;
        },
      }),
    }),
  });
  await trial.house.begin('Dana Whitlock', 'Whitlock Water');
  const lines: string[] = [];
  const app = trial.listen('loopback', { logger: loggerTo('info', (line) => void lines.push(line)) });
  const headers = { authorization: 'Bearer private-key' };
  const answer = await app.inject({ method: 'GET', url: '/own/api/visits?key=private', headers });
  expect(answer.statusCode).toBe(500);
  expect(answer.body).not.toContain('secret');
  expect(lines.join('')).toContain('secret detail');
  expect(lines.join('')).toContain('/own/api/visits');
  expect(lines.join('')).not.toContain('private');
  for (const line of lines) expect(() => JSON.parse(line)).not.toThrow();
});
