import { httpTransport } from '@brinewright/journal';
import { transportSuite } from '@brinewright/journal/testing';
import { expect, test } from 'vitest';
import { openTrial } from '../../test/trial.ts';

/* The way from a device to the server, over HTTP in life: it must do what every way does. */

transportSuite('HTTP', async () => {
  const trial = await openTrial();
  const { company } = await trial.house.begin('Dana Whitlock', 'Whitlock Water');
  const { key } = await trial.house.devices.pair(company, 'Ines, phone');
  const app = trial.listen('lan', { behindProxy: true });
  const api = `${await app.listen({ host: '127.0.0.1', port: 0 })}/own/api`;
  let isCut = false;
  const to = (address: string): string => (isCut ? address.replace(api, nowhere) : address);
  return {
    transport: httpTransport({ api, key, fetch: (address, request) => fetch(to(address), request) }),
    company,
    store: trial.own.store,
    cut: async () => {
      isCut = true;
    },
    turnAway: async () => {
      for (const { id } of await trial.house.devices.list()) await trial.house.devices.revoke(id);
    },
    close: () => trial.close(),
  };
});

const nowhere = 'http://127.0.0.1:1/own/api';

test.each([
  ['a proxy’s own page', 200, '<html>signed in</html>'],
  ['an answer cut off', 200, '{"epoch": "x", "last'],
  ['an answer of another make', 200, '{"epoch": 1}'],
  ['a server in trouble', 503, '{}'],
  ['a server busy', 429, '{}'],
])('%s is no answer', async (_, status, text) => {
  const odd = httpTransport({ api: nowhere, fetch: async () => new Response(text, { status }) });
  expect(await odd.push({ entries: [] })).toEqual({ state: 'no-answer' });
  expect(await odd.pull({ follow: { all: 0 } })).toEqual({ state: 'no-answer' });
});
