import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Sealed } from '../entry/entry.ts';
import { seal } from '../entry/seal.ts';
import { redact, targetOf } from '../store/redaction.ts';
import { vectorOf } from '../store/vector.ts';
import { arbitraryHistory } from '../testing/arbitrary-history.ts';
import { testCompany, testId } from '../testing/desk.ts';
import { allIn } from '../testing/device-store-suite.ts';
import { MemoryDeviceStore, newDevice } from './memory-device-store.ts';
import { takeEntries } from './take-entries.ts';

const runs = { numRuns: 100, seed: 20261125 };
const epoch = testId(77);

/** A history as a server may send it: what a redaction aims at whole or as a tombstone. */
const arbitrarySent: fc.Arbitrary<readonly Sealed[]> = arbitraryHistory.chain((entries) =>
  fc.array(fc.boolean(), { minLength: entries.length, maxLength: entries.length }).map((chosen) => {
    const by = new Map(entries.flatMap((entry) => [[targetOf(entry), entry.id] as const]));
    return entries.map((entry, at) => {
      const redaction = by.get(entry.id);
      return chosen[at] && redaction !== undefined ? redact(seal(entry), redaction) : seal(entry);
    });
  }),
);

/** All of it in another order, some of it twice, in pages of any length. */
const arbitraryPages = (all: readonly Sealed[]): fc.Arbitrary<readonly (readonly Sealed[])[]> =>
  fc
    .tuple(
      fc.shuffledSubarray([...all], { minLength: all.length }),
      fc.shuffledSubarray([...all]),
      fc.array(fc.nat(2 * all.length), { maxLength: 6 }),
    )
    .map(([once, twice, cuts]) => {
      const sent = [...once, ...twice];
      const edges = [0, ...cuts.toSorted((a, b) => a - b), sent.length];
      return edges.slice(1).map((edge, at) => sent.slice(edges[at], edge));
    });

const sentTwoWays = arbitrarySent.chain((all) =>
  fc.tuple(fc.constant(all), arbitraryPages(all), arbitraryPages(all)),
);

/** What a device holds then. By which of two redactions an entry went is the one thing that may differ. */
const heldAfter = async (pages: readonly (readonly Sealed[])[], from: string | undefined) => {
  const store = new MemoryDeviceStore(newDevice(testCompany, testId(99)));
  for (const page of pages) await store.transact((tx) => takeEntries(tx, page, from));
  const { state, streams, held } = await allIn(store);
  return {
    lamport: state.lamport,
    streams: streams.map(({ gone: _, ...stream }) => stream),
    held: held.map(({ entry, text, ...standing }) => ({
      id: entry.id,
      ...standing,
      text: standing.redacted ? 'gone' : text,
    })),
  };
};

it('holds the same after any order, repetition and batching of the same entries of a server (F1, R1)', async () => {
  let taken = 0;
  await fc.assert(
    fc.asyncProperty(sentTwoWays, async ([all, one, other]) => {
      const first = await heldAfter(one, epoch);
      expect(await heldAfter(other, epoch)).toEqual(first);
      expect(first.held).toHaveLength(new Set(all.map(({ entry }) => entry.id)).size);
      expect(first.held.every(({ durable }) => durable === epoch)).toBe(true);
      taken += first.held.filter(({ redacted }) => redacted).length;
    }),
    runs,
  );
  expect(taken).toBeGreaterThan(20);
});

it('holds the same after any order, repetition and batching of the same entries of a bundle (F1)', async () => {
  await fc.assert(
    fc.asyncProperty(sentTwoWays, async ([, one, other]) => {
      const first = await heldAfter(one, undefined);
      expect(await heldAfter(other, undefined)).toEqual(first);
      expect(first.held.every(({ durable }) => durable === undefined)).toBe(true);
    }),
    runs,
  );
});

it('knows the run without a gap of each device, and the highest order, of all that came so far (J3, J4)', async () => {
  await fc.assert(
    fc.asyncProperty(sentTwoWays, async ([, pages]) => {
      const some = pages.slice(0, Math.ceil(pages.length / 2));
      const entries = some.flat().map(({ entry }) => entry);
      const { lamport, streams } = await heldAfter(some, epoch);
      expect(lamport).toBe(Math.max(0, ...entries.map((entry) => entry.lamport)));
      for (const { stream, vector } of streams)
        expect(vector).toEqual(
          Object.fromEntries(vectorOf(entries.filter((entry) => entry.stream === stream))),
        );
    }),
    runs,
  );
});
