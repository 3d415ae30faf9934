import { createHash } from 'node:crypto';
import { httpTransport, type Transport } from '@brinewright/journal';
import { aHand, anEntry, entriesOf } from '@brinewright/journal/testing';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTrial, type Trial } from '../../test/trial.ts';

/* The way from a device to the server, over HTTP in life: the same answers as from the store itself. */

let trial: Trial;
let transport: Transport;
let company = '';
let key = '';
let api = '';
beforeEach(async () => {
  trial = await openTrial();
  ({ company } = await trial.house.begin('Dana Whitlock', 'Whitlock Water'));
  ({ key } = await trial.house.devices.pair(company, 'Ines, phone'));
  const app = trial.listen('lan', { behindProxy: true });
  api = `${await app.listen({ host: '127.0.0.1', port: 0 })}/own/api`;
  transport = httpTransport({ api, key, fetch });
});
afterEach(() => trial.close());

const sent = (entries: readonly { readonly entry: unknown }[]) => ({
  entries: entries.map(({ entry }) => ({ entry })),
});

test('what is pushed is pulled again, in order of position, from where the device stands', async () => {
  const entries = entriesOf(aHand({ company }), 5);
  const pushed = await transport.push(sent(entries));
  if (pushed.state !== 'answered') throw new Error(pushed.state);
  expect(pushed.value.verdicts.map(({ state }) => state)).toEqual(Array(5).fill('kept'));
  const first = await transport.pull({ follow: { all: 1 }, most: 2 });
  if (first.state !== 'answered') throw new Error(first.state);
  expect(first.value.entries.map(({ position }) => position)).toEqual([2, 3]);
  expect(first.value.more).toBe(true);
  const rest = await transport.pull({ epoch: first.value.epoch, follow: { all: 3 } });
  if (rest.state !== 'answered') throw new Error(rest.state);
  expect(rest.value.entries.map(({ entry }) => entry)).toEqual(entries.slice(2).map(({ entry }) => entry));
  expect(rest.value.more).toBe(false);
});

test('a repeated push is acknowledged with the old positions, an altered one refused', async () => {
  const hand = aHand({ company });
  const entry = anEntry(hand, 1);
  const first = await transport.push(sent([entry]));
  const again = await transport.push(sent([entry]));
  expect(again.state === 'answered' && again.value.verdicts).toEqual(
    first.state === 'answered' && first.value.verdicts,
  );
  const altered = { entry: { ...entry.entry, author: 'Somebody else' } };
  const judged = await transport.push(sent([altered]));
  expect(judged.state === 'answered' && judged.value.verdicts).toMatchObject([
    { state: 'refused', reason: 'tampered' },
  ]);
});

test('to a device of another epoch no entries come, only the epoch', async () => {
  await transport.push(sent(entriesOf(aHand({ company }), 2)));
  const pulled = await transport.pull({ epoch: crypto.randomUUID(), follow: { all: 0 } });
  expect(pulled).toMatchObject({ state: 'answered', value: { entries: [], more: false, last: 3 } });
});

test('an offer is answered with what the server lacks', async () => {
  const hand = aHand({ company });
  await transport.push(sent(entriesOf(hand, 2)));
  const { stream, device } = hand;
  const offered = await transport.offer({ have: [{ stream, device, seq: 5 }] });
  expect(offered.state === 'answered' && offered.value.want).toEqual([{ stream, device, after: 2 }]);
});

test('files go and come whole; one that is not what its name says is refused; one that is not there is nothing', async () => {
  const bytes = crypto.getRandomValues(new Uint8Array(60_000));
  const hash = createHash('sha256').update(bytes).digest('hex');
  expect(await transport.fetchFile(hash)).toEqual({ state: 'answered', value: undefined });
  expect(await transport.sendFile('a'.repeat(64), bytes)).toEqual({ state: 'answered', value: 'refused' });
  expect(await transport.sendFile(hash, bytes)).toEqual({ state: 'answered', value: 'durable' });
  expect(await transport.fetchFile(hash)).toEqual({ state: 'answered', value: bytes });
});

test('a device that is let in no more is told so, and no network is no answer', async () => {
  const [device] = await trial.house.devices.list();
  if (device === undefined) throw new Error('no device');
  await trial.house.devices.revoke(device.id);
  expect(await transport.pull({ follow: { all: 0 } })).toEqual({ state: 'not-allowed' });
  const nowhere = httpTransport({ api: 'http://127.0.0.1:1/own/api', fetch });
  expect(await nowhere.push({ entries: [] })).toEqual({ state: 'no-answer' });
  expect(await nowhere.fetchFile('a'.repeat(64))).toEqual({ state: 'no-answer' });
});

test.each([
  ['a proxy’s own page', 200, '<html>signed in</html>'],
  ['an answer cut off', 200, '{"epoch": "x", "last'],
  ['an answer of another make', 200, '{"epoch": 1}'],
  ['a server in trouble', 503, '{}'],
  ['a server busy', 429, '{}'],
])('%s is no answer', async (_, status, text) => {
  const odd = httpTransport({ api, fetch: async () => new Response(text, { status }) });
  expect(await odd.push({ entries: [] })).toEqual({ state: 'no-answer' });
  expect(await odd.pull({ follow: { all: 0 } })).toEqual({ state: 'no-answer' });
});
