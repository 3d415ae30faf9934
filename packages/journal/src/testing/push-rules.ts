import { describe, expect, it } from 'vitest';
import type { Sealed } from '../entry/entry.ts';
import type { JournalStore, Verdict } from '../store/journal-store.ts';
import { aHand, aNote, anEntry, entriesOf, nextUuid } from './some-entries.ts';
import { batchOf, type Open } from './store-suite.ts';

/** S1, S2: what is taken, what is refused, and the place each gets. */
export const pushRules = (open: Open): void => {
  describe('push', () => {
    it('gives places 1, 2, 3 … in the order of the batch', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const first = await store.push(batchOf(company, entriesOf(hand, 3)));
      expect(placesOf(first.verdicts)).toEqual([1, 2, 3]);
      expect(first.last).toBe(3);
      const second = await store.push(batchOf(company, entriesOf(hand, 2, 4)));
      expect(placesOf(second.verdicts)).toEqual([4, 5]);
      expect(await store.state(company)).toEqual({ epoch: first.epoch, last: 5 });
    });

    it('takes an empty batch and changes nothing', async () => {
      const { store, company } = await open(nextUuid());
      const { last, verdicts } = await store.push(batchOf(company, []));
      expect({ last, verdicts }).toEqual({ last: 0, verdicts: [] });
    });

    it('keeps text, hash, pusher and time as they came', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const one = anEntry(hand, 1, {
        clock: -420,
        seen: { [nextUuid()]: 7 },
        about: { visit: 'a', more: 1 },
      });
      await store.push(batchOf(company, [one], { pusher: 'phone two' }));
      expect(await store.find(company, one.entry.id)).toEqual({
        ...one,
        position: 1,
        pusher: 'phone two',
        received: '2026-11-25T12:00:00.000Z',
      });
      expect(await store.find(company, nextUuid())).toBeUndefined();
    });

    it('acknowledges a repeat with its old place, among new ones too', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const entries = entriesOf(hand, 4);
      await store.push(batchOf(company, entries.slice(0, 2)));
      expect(placesOf((await store.push(batchOf(company, entries))).verdicts)).toEqual([1, 2, 3, 4]);
      const again = await store.push(batchOf(company, entries));
      expect(placesOf(again.verdicts)).toEqual([1, 2, 3, 4]);
      expect(again.last).toBe(4);
    });

    it('acknowledges the same entry twice in one batch with one place', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const [one, two] = [anEntry(hand, 1), anEntry(hand, 2)];
      const { verdicts, last } = await store.push(batchOf(company, [one, one, two]));
      expect(placesOf(verdicts)).toEqual([1, 1, 2]);
      expect(last).toBe(2);
    });

    it('refuses an id that comes again with other content: tampered', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const one = anEntry(hand, 1);
      await store.push(batchOf(company, [one]));
      const other = anEntry(hand, 1, { id: one.entry.id, payload: { text: 'changed' } });
      expect(await reasonsOf(store, company, [other])).toEqual(['tampered']);
      expect((await store.find(company, one.entry.id))?.text).toBe(one.text);
    });

    it('refuses a number that another entry has: forked', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      await store.push(batchOf(company, [anEntry(hand, 1)]));
      expect(await reasonsOf(store, company, [anEntry(hand, 1)])).toEqual(['forked']);
      expect(await reasonsOf(store, company, [anEntry(hand, 2), anEntry(hand, 2)])).toEqual([
        'kept',
        'forked',
      ]);
    });

    it('takes the same number of another device or another stream', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const others = [aHand({ ...hand, device: nextUuid() }), aHand({ ...hand, stream: nextUuid() })];
      const entries = [hand, ...others].map((one) => anEntry(one, 1));
      expect(await reasonsOf(store, company, entries)).toEqual(['kept', 'kept', 'kept']);
    });

    it('refuses an entry of another company, and its own company never learns of it', async () => {
      const [hand, foreign] = [aHand(), aHand()];
      const { store, company } = await open(hand.company);
      await store.begin(foreign.company);
      const entries = [anEntry(hand, 1), anEntry(foreign, 1), anEntry(hand, 2)];
      expect(await reasonsOf(store, company, entries)).toEqual(['kept', 'other-company', 'kept']);
      expect((await store.state(foreign.company)).last).toBe(0);
      expect((await store.state(company)).last).toBe(2);
    });

    it('bounds the lamport at 1,000,000 above the highest, counting what came earlier in the batch', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const at = (seq: number, lamport: number) => anEntry(hand, seq, { lamport });
      expect(await reasonsOf(store, company, [at(1, 1_000_001)])).toEqual(['lamport']);
      expect(await reasonsOf(store, company, [at(1, 1_000_000)])).toEqual(['kept']);
      const climbing = [at(2, 2_000_000), at(3, 3_000_000), at(4, 4_000_001), at(5, 4_000_000)];
      expect(await reasonsOf(store, company, climbing)).toEqual(['kept', 'kept', 'lamport', 'kept']);
      expect(await reasonsOf(store, company, [at(6, 5_000_000)])).toEqual(['kept']);
    });

    it('keeps the rest of a batch whatever is refused in it, without a gap', async () => {
      const [hand, foreign] = [aHand(), aHand()];
      const { store, company } = await open(hand.company);
      const one = anEntry(hand, 1);
      await store.push(batchOf(company, [one]));
      const { verdicts, last } = await store.push(
        batchOf(company, [
          anEntry(hand, 1),
          anEntry(hand, 2),
          aNote(hand, 1, { text: 'other', id: one.entry.id }),
          anEntry(hand, 9, { id: one.entry.id }),
          anEntry(foreign, 1),
          anEntry(hand, 3, { lamport: 9_000_000 }),
          one,
          anEntry(hand, 3),
        ]),
      );
      expect(verdicts.map(sayVerdict)).toEqual([
        'forked',
        2,
        'forked',
        'tampered',
        'other-company',
        'lamport',
        1,
        3,
      ]);
      expect(last).toBe(3);
      expect((await store.pull(company, { all: 0 }, 10)).entries.map(({ position }) => position)).toEqual([
        1, 2, 3,
      ]);
    });

    it('leaves no gap in the places after a batch that was refused whole', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      await store.push(batchOf(company, [anEntry(hand, 1)]));
      await store.push(batchOf(company, [anEntry(hand, 1), anEntry(hand, 1)]));
      expect(placesOf((await store.push(batchOf(company, [anEntry(hand, 2)]))).verdicts)).toEqual([2]);
    });

    it('gives twenty pushes at once their places without gap or double', async () => {
      const { store, company } = await open(nextUuid());
      const batches = Array.from({ length: 20 }, () => entriesOf(aHand({ company }), 5));
      const replies = await Promise.all(batches.map((entries) => store.push(batchOf(company, entries))));
      const places = replies.flatMap(({ verdicts }) => placesOf(verdicts)).toSorted((a, b) => a - b);
      expect(places).toEqual(oneTo(100));
      for (const { verdicts } of replies) expect(isRun(placesOf(verdicts))).toBe(true);
      expect((await store.state(company)).last).toBe(100);
    });

    it('takes the same entries pushed several times at once only once', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const entries = entriesOf(hand, 10);
      const replies = await Promise.all(
        Array.from({ length: 8 }, (_, turn) =>
          store.push(batchOf(company, turn % 2 === 0 ? entries : entries.slice(3))),
        ),
      );
      const placeOf = new Map<string, number>();
      for (const verdict of replies.flatMap(({ verdicts }) => verdicts)) {
        if (verdict.state !== 'kept') throw new Error('a repeat was refused');
        expect(placeOf.get(verdict.id) ?? verdict.position).toBe(verdict.position);
        placeOf.set(verdict.id, verdict.position);
      }
      expect([...placeOf.values()].toSorted((a, b) => a - b)).toEqual(oneTo(10));
      expect((await store.state(company)).last).toBe(10);
    });

    it('lets one of two copied devices have each number', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const replies = await Promise.all(
        Array.from({ length: 6 }, () => store.push(batchOf(company, entriesOf(hand, 4)))),
      );
      const said = replies.flatMap(({ verdicts }) => verdicts.map(sayVerdict));
      expect(said.filter((one) => one === 'forked')).toHaveLength(20);
      expect(said.filter((one) => typeof one === 'number').toSorted()).toEqual([1, 2, 3, 4]);
    });

    it.each(hostile)('gives back hostile text as it came: %s', async (_, text) => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const one = anEntry(hand, 1, { payload: { text, [text]: 1 }, author: text.slice(0, 200), zone: '' });
      await store.push(batchOf(company, [one], { pusher: 'phone' }));
      const [held] = (await store.pull(company, { all: 0 }, 1)).entries;
      expect(held?.text).toBe(one.text);
      expect(held?.hash).toBe(one.hash);
      expect(held?.entry.payload).toEqual(one.entry.payload);
    });

    it('keeps 500 entries in one batch', async () => {
      const hand = aHand();
      const { store, company } = await open(hand.company);
      const entries = entriesOf(hand, 500);
      await store.push(batchOf(company, entries.slice(0, 250)));
      expect(placesOf((await store.push(batchOf(company, entries))).verdicts)).toEqual(oneTo(500));
    });

    it('throws for a company that was not begun', async () => {
      const { store } = await open(nextUuid());
      const hand = aHand();
      await expect(store.push(batchOf(hand.company, [anEntry(hand, 1)]))).rejects.toThrow(RangeError);
      await expect(store.state(hand.company)).rejects.toThrow(RangeError);
      await expect(store.pull(hand.company, { all: 0 }, 1)).rejects.toThrow(RangeError);
    });
  });
};

const hostile: readonly (readonly [string, string])[] = [
  ['a NUL', 'before\u0000after'],
  ['emoji and combined letters', '🔧🏽‍♂️ e\u0301 ñ 🧂'],
  ['right to left with marks', '\u202eמים رأس\u202c'],
  ['text that looks like SQL', `'); drop table entry; -- " \\ \${x} $1 ? :a`],
  ['line breaks and controls', '\r\n\t\u0001\u007f\u2028\u2029\ufeff'],
  ['200 kB', 'salt '.repeat(40_000)],
];

const placesOf = (verdicts: readonly Verdict[]): number[] =>
  verdicts.map((verdict) => (verdict.state === 'kept' ? verdict.position : Number.NaN));

const sayVerdict = (verdict: Verdict): number | string =>
  verdict.state === 'kept' ? verdict.position : verdict.reason;

const reasonsOf = async (store: JournalStore, company: string, entries: readonly Sealed[]) =>
  (await store.push(batchOf(company, entries))).verdicts.map((verdict) =>
    verdict.state === 'kept' ? 'kept' : verdict.reason,
  );

const oneTo = (last: number): number[] => Array.from({ length: last }, (_, place) => place + 1);

const isRun = (places: readonly number[]): boolean =>
  places.every((place, at) => place === (places[0] ?? 0) + at);
