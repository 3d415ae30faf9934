import type { Operation } from '@brinewright/equipment';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { operation } from '../testing/tiny-operations.ts';
import { leastClosure } from './closure.ts';
import { roundTripMinutes } from './operation-kinds.ts';

const size = 8;

/** Operations that come after earlier ones only, each in up to three ways. */
const someOperations = fc
  .tuple(
    ...Array.from({ length: size }, (_, at) =>
      fc.record({
        minutes: fc.integer({ min: 1, max: 9 }),
        ways: fc.array(
          fc.uniqueArray(fc.integer({ min: 0, max: Math.max(0, at - 1) }), { maxLength: at === 0 ? 0 : 2 }),
          { maxLength: 3 },
        ),
      }),
    ),
  )
  .map((drawn) =>
    drawn.map(({ minutes, ways }, at) =>
      operation(`o${at}`, {
        minutes: { hands: minutes, waiting: 0 },
        after: ways.map((way) => way.map((other) => `o${other}`)),
      }),
    ),
  );

const isClosed = (chosen: ReadonlySet<string>, operations: readonly Operation[]): boolean =>
  operations
    .filter(({ id }) => chosen.has(id))
    .every(({ after }) => after.length === 0 || after.some((way) => way.every((id) => chosen.has(id))));

/** All subsets, looked at one by one. */
const leastByTrying = (operations: readonly Operation[], wanted: readonly string[]): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** operations.length; mask++) {
    const chosen = operations.filter((_, at) => (mask & (1 << at)) !== 0);
    const ids = new Set(chosen.map(({ id }) => id));
    if (!wanted.every((id) => ids.has(id)) || !isClosed(ids, operations)) continue;
    least = Math.min(
      least,
      chosen.reduce((sum, one) => sum + roundTripMinutes(one), 0),
    );
  }
  return least;
};

test('the closure is as short as the shortest of all sets that would do', () => {
  fc.assert(
    fc.property(
      someOperations,
      fc.uniqueArray(fc.integer({ min: 0, max: size - 1 }), { minLength: 1, maxLength: 3 }),
      (operations, aims) => {
        const wanted = aims.map((at) => `o${at}`);
        const closure = leastClosure(
          wanted.map((id) => [[id]]),
          new Map(operations.map((one) => [one.id, one])),
          () => false,
        );
        expect(isClosed(closure.members, operations)).toBe(true);
        expect(closure.minutes).toBe(leastByTrying(operations, wanted));
      },
    ),
    { numRuns: 100, seed: 7 },
  );
});
