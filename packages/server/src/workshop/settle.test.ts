import type { Json } from '@brinewright/journal';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { demoText, fromAfar, openTrial, type Trial } from '../../test/trial.ts';
import { entriesOf } from './every-entry.ts';
import { canSettle } from './settle.ts';
import type { Workshop } from './workshop.ts';

const owner = { pusher: 'workshop', isOwner: true };
const phone = crypto.randomUUID();
const tablet = crypto.randomUUID();
const visit = { visit: 'hotel' };
const unit = { conditioner: 's1' };
const both = { ...visit, ...unit };

let trial: Trial;
let workshop: Workshop;
let stream = '';
beforeEach(async () => {
  trial = await openTrial();
  workshop = await trial.house.begin('Dana Whitlock', 'Whitlock Water');
  const taken = await workshop.addVisit('Dana Whitlock', 'hotel.yaml', demoText('hotel'));
  if (taken.state !== 'taken') throw new Error('the demo visit was not taken');
  stream = taken.stream;
});
afterEach(() => trial.close());

type Case = readonly [
  kind: string,
  about: { readonly visit?: string; readonly conditioner?: string },
  one: Json,
  other: Json,
];

const cases: readonly Case[] = [
  ['site-opened/1', {}, { name: 'Hotel A' }, { name: 'Hotel B' }],
  ['site-described/1', {}, { address: '1 Hill' }, { address: '3 Hill' }],
  ['demand-described/1', {}, { daily: '900 gal' }, { daily: '800 gal' }],
  ['supply-described/1', {}, { pressure: '50 psi' }, { pressure: '55 psi' }],
  ['conditioner-described/1', unit, { tank: { girth: '50 in' } }, { tank: { girth: '52 in' } }],
  ['history-told/1', visit, { changed: 'a pump' }, { changed: 'a filter' }],
  ['gate-checked/1', visit, { priceAgreed: true }, { priceAgreed: false }],
  ['apart-noted/1', visit, { water: 'on' }, { water: 'off' }],
  ['setting-found/1', both, { refill: '10 min' }, { refill: '11 min' }],
  ['setting-set/1', both, { at: '02:00' }, { at: '03:00' }],
  ['visit-noted/1', visit, { note: 'one' }, { note: 'other' }],
  ['complaint-told/1', visit, { words: 'Hard.' }, { words: 'Salty.' }],
  ['decision-made/1', visit, { what: 'fault', value: 'a' }, { what: 'fault', value: 'b' }],
  ['handed-over/1', visit, { to: 'The porter' }, { to: 'The owner' }],
  ['tell-answered/1', both, { tell: 'foot-letter', answer: 'J' }, { tell: 'foot-letter', answer: 'K' }],
  [
    'operation-done/1',
    visit,
    { operation: 'draw-stack', counted: { seal: 7 } },
    { operation: 'draw-stack', counted: { seal: 6 } },
  ],
  ['stock-listed/1', visit, { lines: [{ part: 'seal', count: 1 }] }, { lines: [{ part: 'seal', count: 2 }] }],
  ['meter-read/1', visit, { volume: '100 gal' }, { volume: '200 gal' }],
  ['part-used/1', visit, { part: 'seal', count: 1 }, { part: 'seal', count: 2 }],
  ['part-used/1', visit, { part: 'seal', count: 1, instance: 2 }, { part: 'seal', count: 2, instance: 2 }],
];

const rivalsNow = async () => (await workshop.site(stream))?.rivals ?? [];

describe('a value of two that disagree, written again, counts alone', () => {
  test.each(cases)('%s', async (kind, about, one, other) => {
    const first = await fromAfar(workshop, stream, phone, 1, { kind, about, payload: one, author: 'A' });
    const second = await fromAfar(workshop, stream, tablet, 1, { kind, about, payload: other, author: 'B' });
    await workshop.push(owner, { entries: [{ entry: first }, { entry: second }] });
    const [rival, ...more] = await rivalsNow();
    if (rival === undefined) throw new Error('nothing disagrees');
    expect(more).toEqual([]);
    expect(canSettle(rival)).toBe(true);
    const loser = rival.values[1];
    if (loser === undefined) throw new Error('a rival has two values');
    expect(await workshop.settle('Dana Whitlock', stream, rival, loser.entry)).toBe(true);
    expect(await rivalsNow()).toEqual([]);
    expect((await workshop.site(stream))?.setAside).toEqual([]);
    const chosen = [first, second].find(({ id }) => id === loser.entry);
    const written = (await entriesOf(workshop.store, workshop.company, stream)).at(-1);
    expect(written?.payload).toEqual(chosen?.payload);
    expect(written?.kind).toBe(kind.replace('site-opened', 'site-described'));
    expect(written?.about).toEqual(about);
  });
});

test('two corrections that disagree are settled by correcting once more', async () => {
  const about = visit;
  const note = await fromAfar(workshop, stream, phone, 1, {
    kind: 'visit-noted/1',
    payload: { note: 'wrong' },
    about,
    author: 'A',
  });
  await workshop.push(owner, { entries: [{ entry: note }] });
  const correct = (device: string, seq: number, text: string) =>
    fromAfar(workshop, stream, device, seq, {
      kind: 'corrected/1',
      payload: { target: note.id, payload: { note: text } },
      about,
      author: 'B',
    });
  const entries = [await correct(phone, 2, 'one'), await correct(tablet, 1, 'other')];
  await workshop.push(owner, { entries: entries.map((entry) => ({ entry })) });
  const [rival] = await rivalsNow();
  const loser = rival?.values[1];
  if (rival === undefined || loser === undefined) throw new Error('nothing disagrees');
  expect(canSettle(rival)).toBe(true);
  expect(await workshop.settle('Dana Whitlock', stream, rival, loser.entry)).toBe(true);
  expect(await rivalsNow()).toEqual([]);
  expect((await workshop.site(stream))?.visits[0]?.visit.note).toBe(
    JSON.stringify(loser.value).includes('one') ? 'one' : 'other',
  );
});
