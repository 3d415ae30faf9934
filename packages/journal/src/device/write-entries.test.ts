import { expect, it } from 'vitest';
import { aHand, anEntry, entriesOf, nextUuid } from '../testing/some-entries.ts';
import { noteIn, Party, type PartyDevice } from '../testing/trial-party.ts';
import { takeName } from './names.ts';
import { takeEntries } from './take-entries.ts';

const take = (device: PartyDevice, entries: Parameters<typeof takeEntries>[1]) =>
  device.store.transact((tx) => takeEntries(tx, entries));

it('numbers the entries of each stream 1, 2, 3 … under the name of the device (J2)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const other = nextUuid();
  const drafts = [party.stream, other, party.stream].map((stream) => noteIn(stream, 'a'));
  const written = [...(await device.writeDrafts(drafts)), ...(await device.write(1))];
  expect(written.map(({ entry }) => [entry.stream, entry.seq])).toEqual([
    [party.stream, 1],
    [other, 1],
    [party.stream, 2],
    [party.stream, 3],
  ]);
  expect(new Set(written.map(({ entry }) => entry.device))).toEqual(new Set([(await device.state()).device]));
});

it('begins at 1 again under a new name, having seen what it wrote under the former one (J2, J3)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const former = (await device.state()).device;
  await device.write(2);
  await device.store.transact((tx) => takeName(tx, nextUuid()));
  const { entry } = await device.writeOne(noteIn(party.stream, 'a'));
  expect([entry.seq, entry.seen]).toEqual([1, { [former]: 2 }]);
});

it('gives no number twice, whichever tab writes (J2)', async () => {
  const device = await (await Party.begin()).device();
  const written = (await Promise.all(Array.from({ length: 20 }, () => device.write(2)))).flat();
  const numbers = written.map(({ entry }) => entry.seq).toSorted((a, b) => a - b);
  expect(numbers).toEqual(Array.from({ length: 40 }, (_, at) => at + 1));
});

it('puts an entry behind all that the device holds, in any stream (J4)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  await take(device, [anEntry(aHand({ company: party.company }), 1, { lamport: 40 })]);
  const written = await device.writeDrafts([noteIn(party.stream, 'a'), noteIn(nextUuid(), 'b')]);
  expect(written.map(({ entry }) => entry.lamport)).toEqual([41, 42]);
  expect((await device.state()).lamport).toBe(42);
});

it('has seen of every other device what is held of this stream without a gap (J3)', async () => {
  const { company, stream } = await Party.begin();
  const party = await Party.begin();
  const device = await party.device();
  const [first, gapped, elsewhere] = [
    aHand({ company: party.company, stream: party.stream }),
    aHand({ company: party.company, stream: party.stream }),
    aHand({ company: party.company, stream }),
  ];
  await take(device, [...entriesOf(first, 3), anEntry(gapped, 1), anEntry(gapped, 3), anEntry(elsewhere, 1)]);
  await take(device, entriesOf(aHand({ company, stream: party.stream }), 1));
  const [one, two] = await device.write(2);
  expect(one?.entry.seen).toEqual({ [first.device]: 3, [gapped.device]: 1 });
  expect(two?.entry.seen).toEqual(one?.entry.seen);
  await take(device, [anEntry(gapped, 2)]);
  expect((await device.write(1))[0]?.entry.seen).toEqual({ [first.device]: 3, [gapped.device]: 3 });
});

it('notes no clock before the device has met a server, and how far that is ahead from then on (J5)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const [before] = await device.write(1);
  await device.sync();
  const [after] = await device.write(1);
  expect(before?.entry).not.toHaveProperty('clock');
  expect(after?.entry.clock).toBe(60_000);
});

it('follows a stream that it writes to (S3)', async () => {
  const device = await (await Party.begin()).device();
  const stream = nextUuid();
  await device.writeOne(noteIn(stream, 'a'));
  expect(await device.store.transact((tx) => tx.stream(stream))).toMatchObject({ follows: true, after: 0 });
});

it('writes none of several where the server would refuse one for its form (S1)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const before = await device.state();
  const wrong = { ...noteIn(party.stream, 'b'), about: { visit: 'No Word' } };
  await expect(device.writeDrafts([noteIn(party.stream, 'a'), wrong])).rejects.toThrow(RangeError);
  const tooLong = noteIn(party.stream, 'x'.repeat(300_000));
  await expect(device.writeDrafts([tooLong])).rejects.toThrow('too-large');
  expect(await device.held()).toEqual([]);
  expect(await device.state()).toEqual(before);
  expect((await device.write(1))[0]?.entry.seq).toBe(1);
});
