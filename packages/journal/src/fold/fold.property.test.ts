import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Entry } from '../entry/entry.ts';
import { arbitraryHistory } from '../testing/arbitrary-history.ts';
import { testId } from '../testing/desk.ts';
import { fold } from './fold.ts';
import { foldStock } from './fold-stock.ts';
import { foldWorkshop } from './fold-workshop.ts';

const runs = { numRuns: 300, seed: 20261125 };

const allFolds = (entries: readonly Entry[]) => ({
  site: fold(entries),
  stock: foldStock(testId(20), entries),
  workshop: foldWorkshop(entries),
});

/** The same set in another order, some of it twice, each time as read anew from a text. */
const shuffled = (entries: readonly Entry[]) =>
  fc
    .tuple(
      fc.shuffledSubarray([...entries], { minLength: entries.length }),
      fc.shuffledSubarray([...entries]),
    )
    .map(([all, twice]) => [...all, ...twice].map((entry): Entry => JSON.parse(JSON.stringify(entry))));

it('gives the same for any order, repetition and batching of the same entries (F1)', () => {
  fc.assert(
    fc.property(
      arbitraryHistory.chain((entries) => fc.tuple(fc.constant(entries), shuffled(entries))),
      ([entries, others]) => {
        expect(allFolds(others)).toEqual(allFolds(entries));
      },
    ),
    runs,
  );
});

it('never throws, and tells of every entry that it could not use', () => {
  let told = 0;
  fc.assert(
    fc.property(arbitraryHistory, (entries) => {
      const { setAside, waiting, newer, rivals, visits } = fold(entries);
      told += setAside.length + waiting.length + newer.length + rivals.length;
      const ids = new Set(entries.map(({ id }) => id));
      for (const { entry } of [...setAside, ...waiting, ...newer]) expect(ids).toContain(entry);
      for (const { visit } of visits) expect(visit.conditioners.map(({ id }) => id)).toContain(visit.subject);
    }),
    runs,
  );
  expect(told).toBeGreaterThan(300);
});

it('shows rivals only where neither writer had seen the other (F2)', () => {
  fc.assert(
    fc.property(arbitraryHistory, (entries) => {
      const byId = new Map(entries.map((entry) => [entry.id, entry]));
      for (const { values } of fold(entries).rivals) {
        const written = values.flatMap(({ entry }) => byId.get(entry) ?? []);
        for (const a of written)
          for (const b of written) {
            const knew = a.device === b.device ? a.seq < b.seq : (b.seen[a.device] ?? 0) >= a.seq;
            expect(knew).toBe(false);
          }
      }
    }),
    runs,
  );
});
