import { describe, expect, it } from 'vitest';
import type { DeviceState, Held, StreamState } from '../device/device-store.ts';
import { asDurable, asForked, asRefused, asReplaced } from '../device/held.ts';
import { redact } from '../store/redaction.ts';
import { type OpenDevice, put, sorted } from './device-store-suite.ts';
import { aHand, anEntry, entriesOf, nextUuid } from './some-entries.ts';

/** Each way to find what is kept. */
export const deviceLookUpRules = (open: OpenDevice): void => {
  describe('finding what is kept', () => {
    it('gives an entry back as it was put, with all that is known of it', async () => {
      const { store } = await open();
      const [plain, durable, refused, forked, gone] = entriesOf(aHand(), 5);
      if (!plain || !durable || !refused || !forked || !gone) throw new RangeError('five are needed');
      const all: readonly Held[] = [
        plain,
        asDurable(durable, nextUuid()),
        asRefused(refused, 'lamport'),
        asForked(forked),
        redact(gone, nextUuid()),
      ];
      await put(store, ...all);
      await store.transact(async (tx) => {
        for (const one of all) expect(await tx.entry(one.entry.id)).toEqual(one);
        expect(await tx.entry(nextUuid())).toBeUndefined();
      });
    });

    it('keeps fields of the envelope that this program does not know (J1)', async () => {
      const { store } = await open();
      const about = { visit: 'a', floor: 2 };
      const one = anEntry(aHand(), 1, { about, mood: { of: ['the day'] } });
      await put(store, one);
      expect(await store.transact((tx) => tx.entry(one.entry.id))).toEqual(one);
    });

    it('lets what is put again under an id take the place of what was there', async () => {
      const { store } = await open();
      const hand = aHand();
      const one = anEntry(hand, 1);
      await put(store, asForked(one));
      await put(store, asReplaced(one, undefined));
      await store.transact(async (tx) => {
        expect(await tx.entriesOf(hand.stream)).toEqual([asReplaced(one, undefined)]);
        expect(await tx.refused()).toEqual([]);
      });
    });

    it('gives all that have one number, two after a fork (S1a)', async () => {
      const { store } = await open();
      const hand = aHand();
      const twins = [anEntry(hand, 3), anEntry(hand, 3)];
      const others = [anEntry(hand, 4), anEntry({ ...hand, device: nextUuid() }, 3)];
      await put(store, ...twins, ...others, anEntry({ ...hand, stream: nextUuid() }, 3));
      await store.transact(async (tx) => {
        expect(sorted(await tx.at(hand.stream, hand.device, 3))).toEqual(sorted(twins));
        expect(await tx.at(hand.stream, hand.device, 5)).toEqual([]);
      });
    });

    it('gives an entry and all that were written again for it as of one origin (S1a)', async () => {
      const { store } = await open();
      const first = anEntry(aHand(), 1);
      const { id } = first.entry;
      const again = [1, 2].map((seq) => anEntry(aHand(), seq, { again: id }));
      await put(store, first, ...again, anEntry(aHand(), 1, { again: nextUuid() }));
      await store.transact(async (tx) => {
        expect(sorted(await tx.ofOrigin(id))).toEqual(sorted([first, ...again]));
        expect(await tx.ofOrigin(again[0]?.entry.id ?? '')).toEqual([]);
      });
    });

    it('gives the entries of one stream, and none where there are none', async () => {
      const { store } = await open();
      const [hand, other] = [aHand(), aHand()];
      const here = entriesOf(hand, 3);
      await put(store, ...here, ...entriesOf(other, 2));
      await store.transact(async (tx) => {
        expect(sorted(await tx.entriesOf(hand.stream))).toEqual(sorted(here));
        expect(await tx.entriesOf(nextUuid())).toEqual([]);
      });
    });

    it('gives as unsent what is not durable in this epoch, and neither refused nor displaced (S1, S4)', async () => {
      const { store } = await open();
      const [epoch, former] = [nextUuid(), nextUuid()];
      const [untold, before, here, refused, forked, replaced] = entriesOf(aHand(), 6);
      if (!untold || !before || !here || !refused || !forked || !replaced) throw new RangeError('six');
      const beforeIt = asDurable(before, former);
      await put(store, untold, beforeIt, asDurable(here, epoch), asRefused(refused, 'tampered'));
      await put(store, asForked(forked), asReplaced(replaced, undefined));
      await store.transact(async (tx) => {
        expect(await tx.unsent(epoch, 10)).toEqual([untold, beforeIt]);
        expect(await tx.unsent(former, 10)).toEqual([untold, asDurable(here, epoch)]);
        expect(await tx.unsent(undefined, 10)).toEqual([untold, beforeIt, asDurable(here, epoch)]);
      });
    });

    it('gives the unsent in fold order across streams, the first of them where fewer are asked for (J4)', async () => {
      const { store } = await open();
      const [a, b] = [nextUuid(), nextUuid()];
      const third = anEntry(aHand({ device: a }), 1, { lamport: 3 });
      const second = anEntry(aHand({ device: b }), 9, { lamport: 2 });
      const first = anEntry(aHand({ device: a }), 4, { lamport: 2 });
      const tenth = anEntry(aHand(), 1, { lamport: 10 });
      await put(store, tenth, third, second, first);
      await store.transact(async (tx) => {
        expect(await tx.unsent(undefined, 10)).toEqual([first, second, third, tenth]);
        expect(await tx.unsent(undefined, 2)).toEqual([first, second]);
        expect(await tx.unsent(undefined, 0)).toEqual([]);
        expect(await tx.unsent(nextUuid(), Number.MAX_SAFE_INTEGER)).toHaveLength(4);
      });
    });

    it('gives the refused in fold order, those that await to be written again too (S1)', async () => {
      const { store } = await open();
      const hand = aHand();
      const all = [3, 1, 2].map((seq) => anEntry(hand, seq));
      const [third, first, second] = all;
      if (!third || !first || !second) throw new RangeError('three');
      await put(store, asRefused(third, 'not-owner'), asForked(first), asReplaced(second, undefined));
      expect(await store.transact((tx) => tx.refused())).toEqual([
        asForked(first),
        asRefused(third, 'not-owner'),
      ]);
    });

    it('lets go of the entries of one stream only, and keeps what is known of it (S3)', async () => {
      const { store } = await open();
      const [hand, other] = [aHand(), aHand()];
      const here = entriesOf(hand, 3);
      const known = streamOf(hand.stream);
      await put(store, ...here, anEntry(other, 1));
      await store.transact(async (tx) => {
        await tx.setStream(known);
        await tx.dropEntries(hand.stream);
      });
      await store.transact(async (tx) => {
        expect(await tx.entriesOf(hand.stream)).toEqual([]);
        expect(await tx.entry(here[0]?.entry.id ?? '')).toBeUndefined();
        expect(await tx.at(hand.stream, hand.device, 1)).toEqual([]);
        expect(await tx.ofOrigin(here[0]?.entry.id ?? '')).toEqual([]);
        expect(await tx.unsent(undefined, 10)).toHaveLength(1);
        expect(await tx.stream(hand.stream)).toEqual(known);
      });
    });

    it('gives streams back as they were set, each once', async () => {
      const { store } = await open();
      const [one, other] = [streamOf(nextUuid()), streamOf(nextUuid())];
      await store.transact(async (tx) => {
        await tx.setStream(one);
        await tx.setStream(other);
        await tx.setStream({ ...one, after: 90, beyond: {} });
      });
      await store.transact(async (tx) => {
        expect(await tx.stream(one.stream)).toEqual({ ...one, after: 90, beyond: {} });
        expect(await tx.stream(nextUuid())).toBeUndefined();
        const all = [...(await tx.streams())].toSorted((a, b) => a.after - b.after);
        expect(all).toEqual([other, { ...one, after: 90, beyond: {} }]);
      });
    });

    it('gives its state back as it was set, fields that went away too', async () => {
      const { store } = await open();
      const begin = await store.transact((tx) => tx.state());
      const full: DeviceState = {
        ...begin,
        formerly: [nextUuid()],
        epoch: nextUuid(),
        lamport: 12,
        clock: -420,
        all: 7,
        meeting: true,
      };
      await store.transact((tx) => tx.setState(full));
      expect(await store.transact((tx) => tx.state())).toEqual(full);
      const { all: _, meeting: __, ...bare } = full;
      await store.transact((tx) => tx.setState(bare));
      expect(await store.transact((tx) => tx.state())).toEqual(bare);
    });
  });
};

const streamOf = (stream: string): StreamState => ({
  stream,
  follows: true,
  after: 4,
  vector: { [nextUuid()]: 3, [nextUuid()]: 8 },
  beyond: { [nextUuid()]: [5, 7] },
  gone: { [nextUuid()]: nextUuid() },
});
