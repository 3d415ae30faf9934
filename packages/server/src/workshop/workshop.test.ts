import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { Readable } from 'node:stream';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoText, fromAfar, openTrial, type Trial } from '../../test/trial.ts';
import { bundleText, importEntries } from './bundle.ts';
import { textOf } from './content-files.ts';
import type { Workshop } from './workshop.ts';

const owner = { pusher: 'workshop', isOwner: true };
const phone = crypto.randomUUID();
const tablet = crypto.randomUUID();

let trial: Trial;
let workshop: Workshop;
beforeEach(async () => {
  trial = await openTrial();
  workshop = await trial.house.begin('Dana Whitlock', 'Whitlock Water');
});
afterEach(() => trial.close());

const addDemo = async (name: string, change: (text: string) => string = (text) => text) =>
  workshop.addVisit('Dana Whitlock', `${name}.yaml`, change(demoText(name)));

const streamOf = async (name: string): Promise<string> => {
  const found = (await workshop.sites()).find(({ folded }) => folded.site?.name === name);
  if (found === undefined) throw new Error(`no site ${name}`);
  return found.stream;
};

const pushed = async (...entries: readonly unknown[]) =>
  (await workshop.push(owner, { entries: entries.map((entry) => ({ entry })) })).verdicts;

test('a written visit becomes a site, a unit and a visit, pinned to the definitions in use', async () => {
  expect(await addDemo('hotel')).toMatchObject({ state: 'taken', visit: 'hotel', issues: [] });
  const [site] = await workshop.sites();
  expect(site?.folded.site?.name).toBe('Hotel Marchbank');
  expect(site?.folded.visits.map(({ id }) => id)).toEqual(['hotel']);
  const { equipment } = await workshop.inUse();
  expect(site?.folded.visits[0]?.visit.definitions).toBe(equipment.digest);
  expect(site?.folded.visits[0]?.started.author).toBe('Dana Whitlock');
});

test('a second visit to a site of the same name goes into its stream, a repeated one is not taken', async () => {
  await addDemo('hotel');
  expect(await addDemo('hotel')).toEqual({
    state: 'there-already',
    visit: 'hotel',
    site: 'Hotel Marchbank',
  });
  const second = await addDemo('hotel', (text) => text.replace('id: hotel', 'id: hotel-again'));
  expect(second).toMatchObject({ state: 'taken', stream: await streamOf('Hotel Marchbank') });
  expect((await workshop.sites()).map(({ folded }) => folded.visits.length)).toEqual([2]);
});

test('two visits brought in at the same moment do not make two sites of one', async () => {
  const again = (text: string): string => text.replace('id: hotel', 'id: hotel-again');
  await Promise.all([addDemo('hotel'), addDemo('hotel', again)]);
  expect(await workshop.sites()).toHaveLength(1);
});

test('a site of the same name at another address is another site', async () => {
  await addDemo('hotel');
  await addDemo('hotel', (text) => text.replace('2 Lantern Hill', '9 Far Road'));
  expect(await workshop.sites()).toHaveLength(2);
});

test('of a visit with a fault nothing is taken, and the faults have their places', async () => {
  const taken = await addDemo('hotel', (text) => text.replace('pressure: 64 psi', 'pressure: 64 apples'));
  expect(taken).toMatchObject({ state: 'faulty', issues: [{ place: { file: 'hotel.yaml' } }] });
  expect(await workshop.sites()).toEqual([]);
  const { last } = await workshop.state();
  expect(last).toBe(1);
});

test('what devices push is folded at the next question, stream by stream', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const about = { visit: 'hotel', conditioner: 's1' };
  const say = (refill: string) =>
    ({ kind: 'setting-set/1', payload: { refill }, about, author: 'Ines Marlow' }) as const;
  await pushed(await fromAfar(workshop, stream, phone, 1, say('18 min')));
  const folded = await workshop.site(stream);
  expect(folded?.visits[0]?.visit.settings?.set?.refill?.as).toBe('18 min');
});

test('rival values stand until one is written again, and then it counts', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const about = { visit: 'hotel', conditioner: 's1' };
  const set = (refill: string, author: string) => ({
    kind: 'setting-set/1',
    payload: { refill },
    about,
    author,
  });
  const one = await fromAfar(workshop, stream, phone, 1, set('18 min', 'Ines Marlow'));
  const other = await fromAfar(workshop, stream, tablet, 1, set('20 min', 'Tomás Arrieta'));
  await pushed(one, other);
  const [rival] = (await workshop.site(stream))?.rivals ?? [];
  expect(rival?.values.map(({ value }) => value).toSorted()).toEqual(['18 min', '20 min']);
  if (rival === undefined) throw new Error('no rival');
  expect(await workshop.settle('Dana Whitlock', stream, rival, one.id)).toBe(true);
  const after = await workshop.site(stream);
  expect(after?.rivals).toEqual([]);
  expect(after?.visits[0]?.visit.settings?.set?.refill?.as).toBe('18 min');
  expect(await workshop.settle('Dana Whitlock', stream, rival, crypto.randomUUID())).toBe(false);
});

test('a redaction takes the content out of what is shown, also when it was folded before', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const about = { visit: 'hotel' };
  const note = {
    kind: 'visit-noted/1',
    payload: { note: 'the code of the door' },
    about,
    author: 'Ines Marlow',
  };
  const secret = await fromAfar(workshop, stream, phone, 1, note);
  await pushed(secret);
  expect((await workshop.site(stream))?.visits[0]?.visit.note).toBe('the code of the door');
  await workshop.record('Dana Whitlock', [
    { stream, kind: 'redacted/1', about: {}, payload: { target: secret.id, reason: 'asked for' } },
  ]);
  expect(JSON.stringify(await workshop.site(stream))).not.toContain('the code of the door');
});

test('own definitions are checked together with the shipped ones and are in use at once', async () => {
  const before = (await workshop.inUse()).equipment;
  const faulty = await workshop.addDefinition('Dana Whitlock', 'mine.yaml', 'family: mine\nnonsense: 1\n');
  expect(faulty.state).toBe('faulty');
  expect(faulty.issues.map(({ place }) => place?.file)).toContain('mine.yaml');
  const media = 'media:\n  dark-sand:\n    title: Dark sand\n    nonsense: 1\n';
  expect((await workshop.addDefinition('Dana Whitlock', 'sand.yaml', media)).state).toBe('faulty');
  const taken = await workshop.addDefinition('Dana Whitlock', 'mine.yaml', ownFamily);
  expect(taken.state).toBe('taken');
  const after = (await workshop.inUse()).equipment;
  expect(after.digest).not.toBe(before.digest);
  expect([...after.families.keys()]).toContain('my-own');
});

const ownFamily = [
  'family: my-own',
  'title: My own valve',
  'source: invented',
  'like: stock/piston-five-step',
  '',
].join('\n');

test('definitions whose file has not come yet are named, and the rest serves', async () => {
  await workshop.record('Dana Whitlock', [
    {
      stream: workshop.company,
      kind: 'definition-added/1',
      about: {},
      payload: { name: 'elsewhere.yaml', file: 'a'.repeat(64) },
    },
  ]);
  expect(await workshop.inUse()).toMatchObject({ missing: ['elsewhere.yaml'], leftOut: [] });
});

test('a bundle of everything is taken back as known, an altered entry in it is refused', async () => {
  await addDemo('hotel');
  let text = '';
  for await (const part of bundleText(workshop.store, workshop.company)) text += part;
  const bundle = JSON.parse(text);
  const count = bundle.entries.length;
  expect(bundle.company).toBe(workshop.company);
  expect(await importEntries(workshop, owner, bundle.entries)).toEqual({
    kept: 0,
    known: count,
    refused: [],
  });
  const [first] = bundle.entries;
  first.entry.author = 'Somebody else';
  const { known, refused } = await importEntries(workshop, owner, bundle.entries);
  expect(known).toBe(count - 1);
  expect(refused).toEqual([{ id: first.entry.id, reason: 'tampered' }]);
});

test('what a stock place holds follows from its own entries and from parts used at sites', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const van = crypto.randomUUID();
  await workshop.record('Dana Whitlock', [
    { stream: van, kind: 'stock-place-named/1', about: {}, payload: { name: 'Van' } },
    { stream: van, kind: 'stock-taken/1', about: {}, payload: { lines: [{ part: 'seal', count: 5 }] } },
    {
      stream,
      kind: 'part-used/1',
      about: { visit: 'hotel' },
      payload: { part: 'seal', count: 2, from: van },
    },
  ]);
  const stock = await workshop.stock();
  expect(stock.map(({ folded }) => folded.name)).toEqual(['Van']);
  expect(stock[0]?.folded.lines).toMatchObject([{ part: 'seal', count: 3 }]);
  expect(await workshop.site(van)).toBeUndefined();
});

test('who listens is told of every move of the log, and of none after it has stopped listening', async () => {
  const told: number[] = [];
  const stop = workshop.onMoved(({ last }) => void told.push(last));
  await addDemo('hotel');
  const { last } = await workshop.state();
  expect(told).toEqual([last]);
  stop();
  await addDemo('iron-well');
  expect(told).toEqual([last]);
});

test('a workshop is begun once, and is there again with its owner when the server is started anew', async () => {
  expect(await trial.house.begin('Somebody else', 'Other')).toBe(workshop);
  const again = (await trial.reopen()).own();
  expect(again?.company).toBe(workshop.company);
  expect(again?.owner).toBe('Dana Whitlock');
  expect(await again?.name()).toBe('Whitlock Water');
});

const heronText = readFileSync(new URL('../../../../docs/samples/heron.yaml', import.meta.url), 'utf8');

test('a visit is assessed with the definitions it was made with, also after others were added (F5)', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const before = await workshop.inUse();
  expect((await workshop.addDefinition('Dana Whitlock', 'heron.yaml', heronText)).state).toBe('taken');
  const [folded] = (await workshop.site(stream))?.visits ?? [];
  if (folded === undefined) throw new Error('no visit');
  const { equipment } = await workshop.inUse();
  expect(equipment.digest).not.toBe(before.equipment.digest);
  expect((await workshop.equipmentOf(folded)).digest).toBe(before.equipment.digest);
  expect((await workshop.assess(folded)).definitions).toBe(before.equipment.digest);
  expect((await workshop.equipmentOf({ ...folded, definitionsFile: 'f'.repeat(64) })).digest).toBe(
    equipment.digest,
  );
});

test('with the content of an entry go its files, unless another entry names them too (R1)', async () => {
  await addDemo('hotel');
  const stream = await streamOf('Hotel Marchbank');
  const about = { visit: 'hotel' };
  const keep = async (text: string): Promise<string> => {
    const hash = createHash('sha256').update(text).digest('hex');
    expect(await workshop.files.receive(workshop.company, hash, Readable.from([Buffer.from(text)]))).toBe(
      'durable',
    );
    return hash;
  };
  const [alone, shared] = [await keep('one photo'), await keep('another photo')];
  const photo = (seq: number, file: string) =>
    fromAfar(workshop, stream, phone, seq, {
      kind: 'photo-taken/1',
      payload: { file },
      about,
      author: 'Ines Marlow',
    });
  const photos = [await photo(1, alone), await photo(2, shared), await photo(3, shared)];
  await pushed(...photos);
  const redaction = (seq: number, target: string | undefined) =>
    fromAfar(workshop, stream, phone, seq, {
      kind: 'redacted/1',
      payload: { target: target ?? '', reason: 'a face' },
      about: {},
      author: 'Dana Whitlock',
    });
  await pushed(await redaction(4, photos[0]?.id), await redaction(5, photos[1]?.id));
  expect(await workshop.files.open(workshop.company, alone)).toBeUndefined();
  expect(await textOf(workshop.files, workshop.company, shared)).toBe('another photo');
});
