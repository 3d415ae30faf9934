import { expect, it } from 'vitest';
import { byFoldOrder, isBefore } from '../entry/order.ts';
import { oneOfEach, originOf } from '../fold/one-of-each.ts';
import { allIn } from '../testing/device-store-suite.ts';
import { aHand, anEntry, nextUuid } from '../testing/some-entries.ts';
import { correctionOf, noteIn, Party, type PartyDevice, redactionOf } from '../testing/trial-party.ts';
import { bundleOf, importBundle, readBundle } from './bundle.ts';
import { standingIn } from './counts.ts';
import { asForked } from './held.ts';
import { writeForkedAgain } from './write-again.ts';

/** Two devices of one name that have both written after the profile was copied. */
const twins = async (isOwner = false) => {
  const party = await Party.begin();
  const one = await party.device({ isOwner });
  await one.write(2);
  await one.sync();
  const other = one.copy();
  return { party, one, other };
};

const idsOf = (device: PartyDevice) =>
  device.held().then((held) =>
    standingIn(held)
      .map(({ id }) => id)
      .toSorted(),
  );

it('writes its entries again under a new name where the server says at push that they are forked (S1a)', async () => {
  const { party, one, other } = await twins();
  const first = await one.write(2);
  await one.sync();
  const forked = await other.write(2);
  const former = (await other.state()).device;
  expect(await other.sync()).toMatchObject({ state: 'done', refused: 0 });

  const log = await party.log();
  const written = [...first, ...forked].map(({ entry }) => entry.id);
  expect(log.slice(2).map(({ entry }) => originOf(entry))).toEqual(written);
  const again = log.slice(4).map(({ entry }) => entry);
  const { device, formerly } = await other.state();
  expect(again.map((entry) => [entry.again, entry.device, entry.seq])).toEqual(
    forked.map(({ entry }, at) => [entry.id, device, at + 1]),
  );
  expect(again.map(({ lamport, payload, wall }) => [lamport, payload, wall])).toEqual(
    forked.map(({ entry }) => [entry.lamport, entry.payload, entry.wall]),
  );
  expect(device).not.toBe(former);
  expect(formerly).toContain(former);
});

it('says of what is written again that its author saw the entries common with the twin, and no others (J3)', async () => {
  const { party, one, other } = await twins();
  const [theirs] = await one.write(1);
  await one.sync();
  await other.write(1);
  const { device: former } = await other.state();
  await other.sync();
  const log = (await party.log()).map(({ entry }) => entry);
  const again = log.find((entry) => entry.again !== undefined);
  expect(again?.seen).toEqual({ [former]: 2 });
  const before = log.filter((entry) => again !== undefined && isBefore(entry, again));
  expect(before.map(({ seq }) => seq)).toEqual([1, 2]);
  expect(before.map(({ id }) => id)).not.toContain(theirs?.entry.id);
});

it('writes its entries again where a page of the server shows the number to be another’s (S1a, S3)', async () => {
  const party = await Party.begin();
  const one = await party.device();
  await one.write(2);
  const other = one.copy();
  await one.sync();
  await one.write(1);
  await one.sync();
  const [forked] = await other.write(1);
  const pushed: unknown[] = [];
  const inner = other.way();
  await other.sync({
    ...inner,
    push: (request) => {
      pushed.push(...request.entries.map(({ entry }) => entry));
      return inner.push(request);
    },
  });
  expect(pushed).toHaveLength(1);
  expect(pushed[0]).toMatchObject({ again: forked?.entry.id });
  expect(await party.origins()).toHaveLength(4);
  expect(await other.find(forked?.entry.id ?? '')).toMatchObject({ displaced: true });
});

it('leads what points at an entry that is written again to the new one (S1a, F3)', async () => {
  const { party, one, other } = await twins(true);
  await one.write(3);
  await one.sync();
  const note = await other.writeOne(noteIn(party.stream, 'a'));
  const correction = await other.writeOne(correctionOf(note, 'b'));
  const secret = await other.writeOne(noteIn(party.stream, 'gate code 4711'));
  const redaction = await other.writeOne(redactionOf(secret));
  await other.sync();
  const log = await party.log();
  const newOf = (origin: string) => log.find(({ entry }) => entry.again === origin);
  const targetOf = (origin: string) => newOf(origin)?.entry.payload;
  expect(targetOf(correction.entry.id)).toMatchObject({ target: newOf(note.entry.id)?.entry.id });
  expect(targetOf(redaction.entry.id)).toMatchObject({ target: newOf(secret.entry.id)?.entry.id });
  expect(newOf(secret.entry.id)?.redacted).toBe(true);
  await one.sync();
  expect(JSON.stringify((await allIn(one.store)).held)).not.toContain('4711');
});

it('writes again also what the server kept behind a fork: its author had not seen the twin’s (S1a, J3)', async () => {
  const { party, one, other } = await twins();
  const [theirs] = await one.write(1);
  await one.sync();
  const [forked, behind] = await other.write(2);
  await other.sync();
  const log = (await party.log()).map(({ entry }) => entry);
  const kept = log.find(({ id }) => id === behind?.entry.id);
  const again = log.filter((entry) => entry.again !== undefined);
  expect(kept?.seq).toBe(4);
  expect(again.map((entry) => entry.again)).toEqual([forked?.entry.id, behind?.entry.id]);
  const stands = oneOfEach(log).byId.get(behind?.entry.id ?? '');
  const twin = log.find(({ id }) => id === theirs?.entry.id);
  if (!stands || !twin) throw new RangeError('both are on record');
  expect([isBefore(twin, stands), isBefore(stands, twin)]).toEqual([false, false]);
  const { epoch } = await other.state();
  expect(await other.find(kept?.id ?? '')).toMatchObject({ durable: epoch });
  expect(await other.sync()).toMatchObject({ sent: 0, received: 0 });
  await one.sync();
  expect(await idsOf(one)).toEqual(await idsOf(other));
});

it('leaves what points at an entry that stands as it is (S1a)', async () => {
  const { party, one, other } = await twins();
  const [common] = await one.held();
  if (common === undefined) throw new RangeError('two were written');
  await one.write(1);
  await one.sync();
  await other.writeOne(correctionOf(common, 'b'));
  await other.sync();
  const [again] = (await party.log()).filter(({ entry }) => entry.again !== undefined);
  expect(again?.entry.payload).toMatchObject({ target: common.entry.id });
});

it('names as `again` the very first, also of one that was written again before (S1a)', async () => {
  const party = await Party.begin();
  const device = await party.device();
  const root = nextUuid();
  const hand = aHand({ company: party.company, stream: party.stream });
  const twice = anEntry(hand, 1, { again: root });
  const written = await device.store.transact(async (tx) => {
    await tx.put([asForked(twice)]);
    return writeForkedAgain(tx, nextUuid);
  });
  expect(written.map(({ entry }) => entry.again)).toEqual([root]);
  expect(written[0]?.entry.id).not.toBe(twice.entry.id);
});

it('writes nothing twice, however often it is done and whoever else did it (S1a)', async () => {
  const { party, one, other } = await twins();
  await one.write(2);
  await one.sync();
  await other.write(2);
  const copy = await party.device();
  const bundle = readBundle(JSON.parse(JSON.stringify(await bundleOf(other.store))));
  if (bundle.state !== 'read') throw new Error(bundle.state);
  await importBundle(copy.store, bundle, nextUuid);

  await other.sync();
  await other.sync();
  expect(await other.store.transact((tx) => writeForkedAgain(tx, nextUuid))).toEqual([]);
  await copy.sync();
  await one.sync();
  const origins = await party.origins();
  expect(origins).toHaveLength(6);
  expect(new Set(origins).size).toBe(6);
  expect(await idsOf(copy)).toEqual(await idsOf(other));
  expect(await idsOf(one)).toEqual(await idsOf(other));
});

it('writes again what another wrote who may never come back, and keeps its own name (S1a)', async () => {
  const { party, one, other } = await twins();
  await one.write(1);
  await one.sync();
  const [forked] = await other.write(1);
  const helper = await party.device();
  const bundle = readBundle(JSON.parse(JSON.stringify(await bundleOf(other.store))));
  if (bundle.state !== 'read') throw new Error(bundle.state);
  await importBundle(helper.store, bundle, nextUuid);
  const { device } = await helper.state();
  await helper.sync();
  expect(await party.origins()).toContain(forked?.entry.id);
  expect((await helper.state()).device).toBe(device);
  expect(forked?.entry.device).not.toBe(device);
});

it('changes the name of the device that came second only (J2, S1a)', async () => {
  const { one, other } = await twins();
  const { device } = await one.state();
  await one.write(1);
  await one.sync();
  await other.write(1);
  await other.sync();
  await one.sync();
  expect((await one.state()).device).toBe(device);
  const [mine, theirs] = [await one.write(1), await other.write(1)];
  expect([await one.sync(), await other.sync()]).toMatchObject([{ sent: 1 }, { sent: 1 }]);
  expect(mine[0]?.entry.device).not.toBe(theirs[0]?.entry.device);
});

it('takes a new name where a page holds an entry under its own that it never wrote (J2)', async () => {
  const { one, other } = await twins();
  await one.write(1);
  await one.sync();
  const { device } = await other.state();
  await other.sync();
  expect((await other.state()).device).not.toBe(device);
});

it('writes again what it had not sent yet under the name at fault, in every stream and in the same order (S1a, J4)', async () => {
  const { party, one, other } = await twins();
  await one.write(1);
  await one.sync();
  const elsewhere = nextUuid();
  const forked = await other.writeDrafts(
    [party.stream, elsewhere, party.stream, elsewhere].map((stream, at) => noteIn(stream, `${at}`)),
  );
  await other.sync(other.way(), { most: 1 });
  const again = (await party.log()).map(({ entry }) => entry).filter((entry) => entry.again !== undefined);
  const ofChain = again.filter(({ device }) => device === again[0]?.device);
  expect(again.toSorted(byFoldOrder).map(originOf)).toEqual(forked.map(({ entry }) => entry.id));
  expect(ofChain).toHaveLength(4);
});

it('writes under a new name what comes after an entry that is refused for good, so that no gap stays (J3, S1)', async () => {
  const party = await Party.begin();
  const device = await party.device({ isOwner: false });
  const [first] = await device.write(1);
  if (first === undefined) throw new RangeError('one');
  const redaction = await device.writeOne(redactionOf(first));
  const [third] = await device.write(1);
  const { device: former } = await device.state();
  expect(await device.sync()).toMatchObject({ state: 'done', refused: 1 });
  expect(await device.find(redaction.entry.id)).toMatchObject({ refused: 'not-owner' });
  expect(await party.origins()).toEqual([first.entry.id, third?.entry.id]);
  const reader = await party.device();
  await reader.sync();
  const [next] = await reader.write(1);
  expect(Object.values(next?.entry.seen ?? {})).toEqual([1, 1]);
  expect((await device.state()).device).not.toBe(former);
  expect(await device.sync()).toMatchObject({ sent: 0, refused: 0 });
});
