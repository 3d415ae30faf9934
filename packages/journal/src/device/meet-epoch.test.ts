import { expect, it } from 'vitest';
import { readEntry } from '../entry/read-entry.ts';
import type { Transport } from '../sync/transport.ts';
import { entriesOf, nextUuid } from '../testing/some-entries.ts';
import { noteIn, Party, type PartyDevice } from '../testing/trial-party.ts';
import { bundleOf, importBundle, readBundle } from './bundle.ts';
import { standingIn } from './counts.ts';
import { unfollow } from './follow.ts';
import { asRefused } from './held.ts';
import { meetEpoch, offersOf } from './meet-epoch.ts';
import { newStream } from './stream-state.ts';
import { takeEntries } from './take-entries.ts';

/** Notes what the server named by its id, and sees at each message that nothing else is held as durable. */
const suspicious = (device: PartyDevice) => {
  const confirmed = new Set<string>();
  const wrong: string[] = [];
  const look = async (): Promise<void> => {
    const { epoch } = await device.state();
    const now = (await device.party.store.state(device.party.company)).epoch;
    for (const { entry, durable } of await device.held())
      if (epoch === now && durable === now && !confirmed.has(entry.id)) wrong.push(entry.id);
  };
  const inner = device.way();
  const way: Transport = {
    ...inner,
    push: async (request) => {
      await look();
      const reply = await inner.push(request);
      const verdicts = reply.state === 'answered' ? reply.value.verdicts : [];
      for (const one of verdicts) if (one.state === 'kept') confirmed.add(one.id);
      return reply;
    },
    pull: async (request) => {
      await look();
      const reply = await inner.pull(request);
      const read = reply.state === 'answered' ? reply.value.entries.map(readEntry) : [];
      for (const one of read) if (one.ok) confirmed.add(one.sealed.entry.id);
      return reply;
    },
    offer: async (request) => {
      await look();
      return inner.offer(request);
    },
  };
  return { way, wrong, confirmed, look };
};

it('sends a restored server what it lacks, and brings others what they missed (S4)', async () => {
  const party = await Party.begin();
  const [one, other] = [await party.device(), await party.device()];
  await one.write(4);
  await one.sync();
  await other.write(2);
  await other.sync();
  const before = new Set(await party.origins());
  await party.restore(1);
  expect(await party.origins()).toHaveLength(1);
  await other.sync();
  expect(new Set(await party.origins())).toEqual(before);
  const { epoch } = await one.state();
  expect(await one.sync()).toMatchObject({ state: 'done', sent: 0, received: 2 });
  expect((await one.state()).epoch).not.toBe(epoch);
  expect(await one.sync()).toMatchObject({ sent: 0, received: 0 });
});

it('takes nothing for durable in a new epoch that the server has not named by its id (S4)', async () => {
  const party = await Party.begin();
  const one = await party.device();
  await one.write(2);
  await one.sync();
  const twin = one.copy();
  await one.write(3);
  await one.sync();
  await party.restore(2);
  const theirs = await twin.write(2);
  await twin.sync();
  const { way, wrong, confirmed, look } = suspicious(one);
  const cut = { ...way, push: async () => ({ state: 'no-answer' as const }) };
  await one.sync(cut);
  await look();
  expect(wrong).toEqual([]);
  await one.sync(way, { most: 2 });
  await look();
  expect(wrong).toEqual([]);
  expect(confirmed.size).toBeGreaterThan(4);
  expect(await party.origins()).toHaveLength(2 + theirs.length + 3);
  const { epoch } = await one.state();
  for (const { entry, durable } of await one.held())
    if (standingIn(await one.held()).includes(entry)) expect(durable).toBe(epoch);
});

it('tries what was refused again in a new epoch, and pulls from the first place on (S4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const [one] = await device.write(1);
  await device.sync();
  if (one === undefined) throw new RangeError('one');
  await device.store.transact(async (tx) => {
    await tx.put([asRefused(one, 'not-owner')]);
    await tx.setState({ ...(await tx.state()), all: 9 });
    await meetEpoch(tx, nextUuid(), nextUuid);
  });
  expect(await device.find(one.entry.id)).toEqual(one);
  expect(await device.state()).toMatchObject({ all: 0, meeting: true });
  expect(await device.store.transact((tx) => tx.stream(party.stream))).toMatchObject({ after: 0 });
});

it('goes on under a new name where its numbers of a stream it let go of may be lost (J2, J3, S4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  await device.write(3);
  await device.sync();
  await unfollow(device.store, device.way(), party.stream, device.options);
  const { device: former } = await device.state();
  await party.restore(1);
  await device.sync();
  const { device: name, formerly } = await device.state();
  expect(name).not.toBe(former);
  expect(formerly).toContain(former);
  expect((await device.write(1))[0]?.entry.seq).toBe(1);
});

it('keeps its name in a new epoch where it holds the last it wrote (J2)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  await device.write(3);
  await device.sync();
  const { device: name } = await device.state();
  await party.restore(0);
  await device.sync();
  expect((await device.state()).device).toBe(name);
  expect((await party.log()).map(({ entry }) => entry.seq)).toEqual([1, 2, 3]);
});

it('heals a restored server from a bundle of another device, whoever wrote it (S4)', async () => {
  const party = await Party.begin();
  const author = await party.device();
  await author.write(3);
  await author.sync();
  const bundle = readBundle(JSON.parse(JSON.stringify(await bundleOf(author.store))));
  if (bundle.state !== 'read') throw new Error(bundle.state);
  await party.restore(0);
  const helper = await party.device();
  await importBundle(helper.store, bundle, nextUuid);
  await helper.sync();
  expect(await party.origins()).toEqual(bundle.entries.map(({ entry }) => entry.id));
});

it('offers the highest number of each device in each stream it follows, those beyond a gap too (S4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const hand = { company: party.company, stream: party.stream, device: nextUuid() };
  const [one, , three] = entriesOf(hand, 3);
  if (one === undefined || three === undefined) throw new RangeError('three');
  const offers = await device.store.transact(async (tx) => {
    await takeEntries(tx, [one, three]);
    await tx.setStream({ ...newStream(nextUuid()), follows: false, vector: { [hand.device]: 2 } });
    return offersOf(tx);
  });
  expect(offers).toEqual([{ have: [{ stream: party.stream, device: hand.device, seq: 3 }] }]);
});

it('offers as many numbers in one message as it may hold, and asks also where it has none (S4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  expect(await device.store.transact(offersOf)).toEqual([{ have: [] }]);
  const vector = Object.fromEntries(Array.from({ length: 10_001 }, () => [nextUuid(), 1]));
  const offers = await device.store.transact(async (tx) => {
    await tx.setStream({ ...newStream(party.stream), vector });
    return offersOf(tx);
  });
  expect(offers.map(({ have }) => have.length)).toEqual([10_000, 1]);
});

it('sends in a new epoch also what it wrote since it last met the old one (S1, S4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  await device.write(2);
  await device.sync();
  const fresh = await device.writeOne(noteIn(nextUuid(), 'a'));
  await party.restore(2);
  await device.sync();
  expect(await party.origins()).toHaveLength(3);
  expect((await party.log()).at(-1)?.entry.id).toBe(fresh.entry.id);
});
