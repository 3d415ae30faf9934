import { describe, expect, it } from 'vitest';
import type { JournalStore, Logged, Wanted } from '../store/journal-store.ts';
import { aHand, anEntry, entriesOf, nextUuid } from './some-entries.ts';
import { batchOf, type Open } from './store-suite.ts';

/** S3, S4: what is given back, and from where. */
export const pullRules = (open: Open): void => {
  describe('pull', () => {
    it('gives the whole log in order of place, page by page', async () => {
      const { store, company, hands } = await threeStreams(open);
      const [a, b] = hands;
      const first = await store.pull(company, { all: 0 }, 4);
      expect(first.entries.map(({ position }) => position)).toEqual([1, 2, 3, 4]);
      expect(first.more).toBe(true);
      const second = await store.pull(company, { all: 4 }, 5);
      expect(second.entries.map(({ position }) => position)).toEqual([5, 6, 7, 8, 9]);
      expect(second).toMatchObject({ more: false, last: 9, epoch: first.epoch });
      expect([a, b].map(({ stream }) => stream)).toEqual(
        first.entries.slice(0, 2).map(({ entry }) => entry.stream),
      );
    });

    it('gives each stream from its own place', async () => {
      const { store, company, hands } = await threeStreams(open);
      const [a, b] = hands;
      const wanted = { streams: new Map([[a.stream, 4] as const, [b.stream, 0] as const]) };
      expect(await placesOf(store, company, wanted, 9)).toEqual([2, 5, 7, 8]);
      const page = await store.pull(company, wanted, 3);
      expect(page.entries.map(({ position }) => position)).toEqual([2, 5, 7]);
      expect(page.more).toBe(true);
    });

    it('gives nothing for streams nobody wrote to and for no streams', async () => {
      const { store, company } = await threeStreams(open);
      for (const streams of [new Map([[nextUuid(), 0] as const]), new Map<string, number>()]) {
        expect(await store.pull(company, { streams }, 5)).toMatchObject({
          entries: [],
          more: false,
          last: 9,
        });
      }
    });

    it('says no more when the page ends with the last entry', async () => {
      const { store, company, hands } = await threeStreams(open);
      expect((await store.pull(company, { all: 6 }, 3)).more).toBe(false);
      const streams = new Map([[hands[2].stream, 0] as const]);
      expect((await store.pull(company, { streams }, 3)).more).toBe(false);
      expect((await store.pull(company, { streams }, 2)).more).toBe(true);
    });

    it('follows a thousand streams at once', async () => {
      const { store, company } = await open(nextUuid());
      const hands = Array.from({ length: 1000 }, () => aHand({ company }));
      for (let from = 0; from < 1000; from += 500)
        await store.push(
          batchOf(
            company,
            hands.slice(from, from + 500).map((hand) => anEntry(hand, 1)),
          ),
        );
      const streams = new Map(hands.map(({ stream }, place) => [stream, place % 2 === 0 ? 0 : place + 1]));
      const { entries, more } = await store.pull(company, { streams }, 400);
      expect(entries.map(({ position }) => position)).toEqual(
        Array.from({ length: 400 }, (_, place) => 2 * place + 1),
      );
      expect(more).toBe(true);
    });

    it('keeps two companies out of each other’s sight', async () => {
      const [ours, theirs] = [aHand(), aHand()];
      const { store, company } = await open(ours.company);
      await store.begin(theirs.company);
      const shared = anEntry(ours, 1);
      await store.push(batchOf(company, [shared]));
      const foreign = anEntry({ ...ours, company: theirs.company }, 1, { id: shared.entry.id });
      const { verdicts } = await store.push(batchOf(theirs.company, [foreign]));
      expect(verdicts).toEqual([{ id: shared.entry.id, state: 'kept', position: 1 }]);
      expect((await store.find(company, shared.entry.id))?.hash).toBe(shared.hash);
      expect((await store.find(theirs.company, shared.entry.id))?.hash).toBe(foreign.hash);
      expect(hashesOf((await store.pull(company, { all: 0 }, 9)).entries)).toEqual([shared.hash]);
      expect(hashesOf((await store.pull(theirs.company, { all: 0 }, 9)).entries)).toEqual([foreign.hash]);
      expect((await store.vectors(theirs.company, [ours.stream])).get(ours.stream)?.size).toBe(1);
      expect(await store.companies()).toEqual(expect.arrayContaining([company, theirs.company]));
    });

    it('draws one epoch for a company and keeps it however often it is begun', async () => {
      const { store, company } = await open(nextUuid());
      const { epoch } = await store.state(company);
      await Promise.all([store.begin(company), store.begin(company)]);
      expect((await store.state(company)).epoch).toBe(epoch);
      const other = nextUuid();
      await store.begin(other);
      expect((await store.state(other)).epoch).not.toBe(epoch);
    });

    it('keeps all when it is closed and opened again', async () => {
      const { store, company, reopen } = await threeStreams(open);
      const before = await store.pull(company, { all: 0 }, 20);
      expect(await (await reopen()).pull(company, { all: 0 }, 20)).toEqual(before);
    });
  });

  describe('vectors', () => {
    it('gives of each device the number up to which nothing is missing', async () => {
      const { store, company } = await open(nextUuid());
      const [whole, gap, late] = [aHand({ company }), aHand({ company }), aHand({ company })];
      const inStream = { stream: whole.stream };
      const entries = [
        ...entriesOf(whole, 3),
        ...[1, 2, 4, 5, 7].map((seq) => anEntry({ ...gap, ...inStream }, seq)),
        ...[2, 3].map((seq) => anEntry({ ...late, ...inStream }, seq)),
      ];
      await store.push(batchOf(company, entries));
      const vectors = await store.vectors(company, [whole.stream, gap.stream]);
      expect(vectors.get(whole.stream)).toEqual(
        new Map([
          [whole.device, 3],
          [gap.device, 2],
        ]),
      );
      expect(vectors.get(gap.stream) ?? new Map()).toEqual(new Map());
      await store.push(batchOf(company, [anEntry({ ...gap, ...inStream }, 3)]));
      expect((await store.vectors(company, [whole.stream])).get(whole.stream)?.get(gap.device)).toBe(5);
    });
  });
};

type Three = readonly [ReturnType<typeof aHand>, ReturnType<typeof aHand>, ReturnType<typeof aHand>];

/** Nine entries, streams a b c a b c a b c. */
const threeStreams = async (open: Open) => {
  const given = await open(nextUuid());
  const { store, company } = given;
  const hands: Three = [aHand({ company }), aHand({ company }), aHand({ company })];
  for (const seq of [1, 2, 3])
    await store.push(
      batchOf(
        company,
        hands.map((hand) => anEntry(hand, seq)),
      ),
    );
  return { ...given, hands };
};

const placesOf = async (store: JournalStore, company: string, wanted: Wanted, most: number) =>
  (await store.pull(company, wanted, most)).entries.map(({ position }) => position);

const hashesOf = (entries: readonly Logged[]): string[] => entries.map(({ hash }) => hash);
