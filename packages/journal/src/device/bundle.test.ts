import { expect, it } from 'vitest';
import type { Json } from '../entry/entry.ts';
import { entriesOf, nextUuid } from '../testing/some-entries.ts';
import { noteIn, Party, type PartyDevice, redactionOf } from '../testing/trial-party.ts';
import { type Bundle, bundleOf, importBundle, readBundle } from './bundle.ts';
import { takeEntries } from './take-entries.ts';

/** Through a file and back. */
const written = (bundle: Bundle): Json => JSON.parse(JSON.stringify(bundle));

const read = (given: unknown) => {
  const bundle = readBundle(given);
  if (bundle.state !== 'read') throw new Error(bundle.state);
  return bundle;
};

const carry = async (from: PartyDevice, to: PartyDevice): Promise<number> =>
  importBundle(to.store, read(written(await bundleOf(from.store))), nextUuid);

it('holds all that lies on a device, sent or not, refused or not, with the hash of each (S1)', async () => {
  const party = await Party.begin();
  const device = await party.device({ isOwner: false });
  const [first] = await device.write(2);
  if (first === undefined) throw new RangeError('two');
  await device.writeOne(redactionOf(first));
  await device.sync();
  await device.writeOne(noteIn(nextUuid(), 'elsewhere'));
  const bundle = await bundleOf(device.store);
  const { entries, refused } = read(written(bundle));
  expect(refused).toEqual([]);
  expect(entries.map(({ entry }) => entry.kind).toSorted()).toEqual([
    'redacted/1',
    'visit-noted/1',
    'visit-noted/1',
    'visit-noted/1',
  ]);
  expect(bundle.entries.map(({ hash }) => hash)).toEqual(entries.map(({ hash }) => hash));
});

it('makes a new device of the one that takes it in, whether it had the name in it or not (J2)', async () => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  await device.write(2);
  const names = [(await device.state()).device, (await other.state()).device];
  expect(await carry(device, other)).toBe(2);
  expect(await carry(device, device)).toBe(0);
  const now = [await device.state(), await other.state()];
  for (const { device: name, formerly } of now) {
    expect(names).not.toContain(name);
    expect(formerly).toHaveLength(1);
  }
  expect(now.flatMap(({ formerly }) => formerly)).toEqual(names);
  expect((await other.write(1))[0]?.entry).toMatchObject({ seq: 1, seen: { [names[0] ?? '']: 2 } });
});

it('takes no acknowledgement over: all of it is asked for again (S4)', async () => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  await device.write(3);
  await device.sync();
  await other.sync(other.way());
  const third = await party.device();
  await carry(device, third);
  for (const held of await third.held()) expect(held.durable).toBeUndefined();
  expect(await third.state()).toMatchObject({ epoch: undefined });
  expect(await third.sync()).toMatchObject({ state: 'done', received: 0 });
  const { epoch } = await third.state();
  for (const held of await third.held()) expect(held.durable).toBe(epoch);
  expect(await party.log()).toHaveLength(3);
});

it('keeps what this device has of an entry, acknowledged as it is (S1)', async () => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  await device.write(2);
  await device.sync();
  await other.sync();
  const before = await other.held();
  expect(await carry(device, other)).toBe(0);
  expect(await other.held()).toEqual(before);
});

it('brings what never was sent to the server by way of another device (S4)', async () => {
  const party = await Party.begin();
  const [lost, other] = [await party.device(), await party.device()];
  const unsent = await lost.write(3);
  await carry(lost, other);
  await other.sync();
  expect(await party.origins()).toEqual(unsent.map(({ entry }) => entry.id));
});

it('carries tombstones, whose content does not come back (R1)', async () => {
  const party = await Party.begin();
  const owner = await party.device({ isOwner: true });
  const secret = await owner.writeOne(noteIn(party.stream, 'gate code 4711'));
  await owner.writeOne(redactionOf(secret));
  await owner.sync();
  const other = await party.device();
  await carry(owner, other);
  expect(await other.find(secret.entry.id)).toMatchObject({ redacted: true, hash: secret.hash });
  expect(JSON.stringify(await bundleOf(other.store))).not.toContain('4711');
});

it('leaves out, and names, what was changed, is of another company or no entry at all (S1)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const [one, two] = await device.write(2);
  const [stranger] = entriesOf({ company: nextUuid(), stream: party.stream, device: nextUuid() }, 1);
  if (!one || !two || !stranger) throw new RangeError('three');
  const { entries, refused } = read({
    schema: 1,
    company: party.company,
    entries: [
      { entry: { ...one.entry, author: 'Somebody else' }, hash: one.hash },
      { entry: stranger.entry, hash: stranger.hash },
      { entry: { id: 'no id' } },
      { entry: two.entry },
    ],
  });
  expect(entries).toEqual([two]);
  expect(refused).toEqual([
    { id: one.entry.id, reason: 'tampered' },
    { id: stranger.entry.id, reason: 'other-company' },
    { id: 'no id', reason: 'malformed' },
  ]);
});

it('is told from any other file', () => {
  for (const other of [undefined, null, 'text', 7, [], {}, { schema: 2, company: nextUuid(), entries: [] }])
    expect(readBundle(other)).toEqual({ state: 'no-bundle' });
});

it('is not taken in by a device of another company, which stays as it was', async () => {
  const [party, strangers] = [await Party.begin(), await Party.begin()];
  const [device, other] = [await party.device(), await strangers.device()];
  await device.write(2);
  const before = await other.state();
  await expect(carry(device, other)).rejects.toThrow(RangeError);
  expect(await other.held(party.stream)).toEqual([]);
  expect(await other.state()).toEqual(before);
});

it('does not count as new what a page has brought in the meantime', async () => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  const [first] = await device.write(3);
  if (first === undefined) throw new RangeError('three');
  await other.store.transact((tx) => takeEntries(tx, [first]));
  expect(await carry(device, other)).toBe(2);
});
