import { expect, it } from 'vitest';
import { entriesOf, nextUuid } from '../testing/some-entries.ts';
import { noteIn, Party, type PartyDevice } from '../testing/trial-party.ts';
import { follow, followAll, unfollow } from './follow.ts';
import { takeEntries } from './take-entries.ts';

const streamOf = (device: PartyDevice, stream = device.party.stream) =>
  device.store.transact((tx) => tx.stream(stream));

const letGo = (device: PartyDevice, way = device.way()) =>
  unfollow(device.store, way, device.party.stream, device.options);

/** A device that has sent two entries and holds two more of another. */
const synced = async () => {
  const party = await Party.begin();
  const [device, other] = [await party.device(), await party.device()];
  await other.write(2);
  await other.sync();
  await device.write(2);
  await device.sync();
  return { party, device, other };
};

it('brings all of a stream from the next meeting on, and nothing of others (S3)', async () => {
  const party = await Party.begin();
  const author = await party.device();
  const elsewhere = nextUuid();
  await author.write(3);
  await author.writeOne(noteIn(elsewhere, 'a'));
  await author.sync();
  const reader = await party.device();
  expect(await reader.sync()).toMatchObject({ received: 3 });
  expect(await reader.held(elsewhere)).toEqual([]);
  await reader.store.transact((tx) => follow(tx, elsewhere));
  expect(await reader.sync()).toMatchObject({ received: 1 });
});

it('goes on from where a stream was pulled to, when it is followed twice (S3)', async () => {
  const { device, party } = await synced();
  const before = await streamOf(device);
  expect(before?.after).toBe(4);
  await device.store.transact((tx) => follow(tx, party.stream));
  expect(await streamOf(device)).toEqual(before);
});

it('brings the whole log to a device that follows all, streams it never heard of too (S3)', async () => {
  const { party } = await synced();
  const author = await party.device();
  await author.writeOne(noteIn(nextUuid(), 'a'));
  await author.sync();
  const office = await party.device();
  await office.store.transact(followAll);
  expect(await office.sync(office.way(), { most: 2 })).toMatchObject({ received: 5 });
  expect(await office.state()).toMatchObject({ all: 5 });
  await office.store.transact(followAll);
  expect(await office.state()).toMatchObject({ all: 5 });
  expect(await letGo(office)).toEqual({ state: 'follows-all' });
});

it('lets go of a stream once all of it is durable, and keeps only its own numbers (S3, J2)', async () => {
  const { device } = await synced();
  const { device: own } = await device.state();
  expect(await letGo(device)).toEqual({ state: 'let-go' });
  expect(await device.held()).toEqual([]);
  expect(await streamOf(device)).toMatchObject({
    follows: false,
    after: 0,
    vector: { [own]: 2 },
    beyond: {},
  });
  expect(await device.sync()).toMatchObject({ received: 0 });
  expect(await device.held()).toEqual([]);
});

it('gives no number again in a stream it had let go of, and holds all of it again then (J2, S3)', async () => {
  const { device, party } = await synced();
  await letGo(device);
  const [next] = await device.write(1);
  expect(next?.entry.seq).toBe(3);
  expect(await device.sync()).toMatchObject({ state: 'done', sent: 1, received: 4 });
  expect(await device.held()).toHaveLength(5);
  expect(await party.origins()).toHaveLength(5);
  expect((await device.write(1))[0]?.entry.seq).toBe(4);
});

it('lets go of nothing while an entry is not confirmed, of its own or of another (S3)', async () => {
  const { device, party } = await synced();
  await device.write(1);
  const hand = { company: party.company, stream: party.stream, device: nextUuid() };
  await device.store.transact((tx) => takeEntries(tx, entriesOf(hand, 1)));
  const before = await device.held();
  expect(await letGo(device)).toEqual({ state: 'unsent', count: 2 });
  expect(await device.held()).toEqual(before);
  expect(await streamOf(device)).toMatchObject({ follows: true });
});

it('lets go of nothing where the server was restored since they last met (S3, S4)', async () => {
  const { device, party } = await synced();
  await party.restore(1);
  expect(await letGo(device)).toEqual({ state: 'unsent', count: 4 });
  expect(await device.held()).toHaveLength(4);
  await device.sync();
  expect(await party.origins()).toHaveLength(4);
  expect(await letGo(device)).toEqual({ state: 'let-go' });
});

it('lets go of nothing without an answer, or where it is let in no more (S3)', async () => {
  const { device } = await synced();
  for (const state of ['no-answer', 'not-allowed'] as const) {
    expect(await letGo(device, { ...device.way(), pull: async () => ({ state }) })).toEqual({ state });
    expect(await device.held()).toHaveLength(4);
  }
});

it('takes no page that was asked for before it let go (S3)', async () => {
  const { device, party, other } = await synced();
  await other.write(1);
  await other.sync();
  const inner = device.way();
  await device.sync({
    ...inner,
    pull: async (request) => {
      const reply = await inner.pull(request);
      await letGo(device);
      return reply;
    },
  });
  expect(await device.held()).toEqual([]);
  expect(await party.origins()).toHaveLength(5);
});
