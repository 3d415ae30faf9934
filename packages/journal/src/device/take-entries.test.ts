import { expect, it } from 'vitest';
import type { Sealed } from '../entry/entry.ts';
import { isTombstone } from '../entry/read-entry.ts';
import { redact } from '../store/redaction.ts';
import { aHand, anEntry, aRedaction, entriesOf, nextUuid } from '../testing/some-entries.ts';
import { MemoryDeviceStore, newDevice } from './memory-device-store.ts';
import { takeEntries } from './take-entries.ts';

const hand = aHand();
const epoch = nextUuid();
const own = nextUuid();
const aStore = (): MemoryDeviceStore => new MemoryDeviceStore(newDevice(hand.company, own));

const take = (store: MemoryDeviceStore, entries: readonly Sealed[]) =>
  store.transact((tx) => takeEntries(tx, entries, epoch));

const find = (store: MemoryDeviceStore, { entry }: Sealed) => store.transact((tx) => tx.entry(entry.id));

it('counts what was not held before, and takes nothing of another company', async () => {
  const store = aStore();
  const [one, two] = entriesOf(hand, 2);
  if (one === undefined || two === undefined) throw new RangeError('two');
  const stranger = anEntry(aHand(), 1);
  expect(await take(store, [one, one, stranger])).toEqual({ fresh: 1, isNameShared: false });
  expect(await take(store, [one, two])).toEqual({ fresh: 1, isNameShared: false });
  expect(await find(store, stranger)).toBeUndefined();
});

it('takes the content out whichever of redaction and target comes first (R1)', async () => {
  const secret = anEntry(hand, 1, { payload: { text: 'gate code 4711' } });
  const redaction = aRedaction(hand, 2, secret.entry.id);
  for (const pages of [
    [secret, redaction],
    [redaction, secret],
  ]) {
    const store = aStore();
    for (const one of pages) await take(store, [one]);
    expect(await find(store, secret)).toEqual({ ...redact(secret, redaction.entry.id), durable: epoch });
    expect(await find(store, redaction)).toMatchObject({ text: redaction.text });
  }
});

it('takes out all that stands for the target of a redaction, whatever comes when (R1, S1a)', async () => {
  const secret = anEntry(hand, 1);
  const again = anEntry(aHand(hand), 3, { device: nextUuid(), again: secret.entry.id });
  const third = anEntry(aHand(hand), 4, { device: nextUuid(), again: secret.entry.id });
  const redaction = aRedaction(hand, 2, again.entry.id);
  const orders = [
    [secret, again, third, redaction],
    [redaction, third, again, secret],
    [redaction, again, secret, third],
    [third, redaction, secret, again],
  ];
  for (const order of orders) {
    const store = aStore();
    for (const one of order) await take(store, [one]);
    for (const one of [secret, again, third]) expect((await find(store, one))?.redacted).toBe(true);
  }
});

it('lets a tombstone take the place of the whole entry, and not the other way round (R1)', async () => {
  const secret = anEntry(hand, 1);
  const gone = redact(secret, nextUuid());
  for (const pages of [
    [secret, gone],
    [gone, secret],
  ]) {
    const store = aStore();
    for (const one of pages) await take(store, [one]);
    const held = await find(store, secret);
    expect(held !== undefined && isTombstone(held.entry)).toBe(true);
    expect(held?.hash).toBe(secret.hash);
  }
});

it('lets a redaction out of a bundle take nothing out: it may have been refused (R1)', async () => {
  const store = aStore();
  const secret = anEntry(hand, 1);
  const redaction = aRedaction(hand, 2, secret.entry.id);
  await store.transact((tx) => takeEntries(tx, [secret, redaction]));
  expect((await find(store, secret))?.text).toBe(secret.text);
  await take(store, [redaction]);
  expect((await find(store, secret))?.redacted).toBe(true);
});

it('keeps what it has of an id that comes with other content, and shows it as tampered (S1)', async () => {
  const store = aStore();
  const one = anEntry(hand, 1);
  const other = anEntry(hand, 1, { id: one.entry.id, payload: { text: 'changed' } });
  await take(store, [one]);
  await store.transact((tx) => takeEntries(tx, [other]));
  expect(await find(store, one)).toEqual({ ...one, durable: epoch });
  await take(store, [other]);
  expect(await find(store, one)).toEqual({ ...one, refused: 'tampered' });
});

it('marks what the server’s entry displaces of the same number as forked (S1a)', async () => {
  const store = aStore();
  const [mine, theirs] = [anEntry(hand, 1), anEntry(hand, 1)];
  await store.transact((tx) => takeEntries(tx, [mine]));
  await take(store, [theirs]);
  expect(await find(store, mine)).toEqual({ ...mine, displaced: true, refused: 'forked' });
  expect(await find(store, theirs)).toEqual({ ...theirs, durable: epoch });
});

it('tells of an entry under its own name that it never wrote: a twin’s (J2)', async () => {
  const store = aStore();
  const twins = entriesOf({ ...hand, device: own }, 2);
  expect(await take(store, twins.slice(0, 1))).toEqual({ fresh: 1, isNameShared: true });
  expect(await take(store, twins.slice(0, 1))).toEqual({ fresh: 0, isNameShared: false });
});
