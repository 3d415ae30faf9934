import fc from 'fast-check';
import { expect, it } from 'vitest';
import { everyRepairOrder } from './repair-cost.ts';
import { bestRepairOrder } from './repair-order.ts';

const covers = { K: 4, L: 1 };
const action = fc.record({
  weight: fc.integer({ min: 1, max: 40 }),
  cost: fc.integer({ min: 1, max: 30 }),
  cover: fc.constantFrom(undefined, 'K', 'L'),
});

const actionsOf = (drawn: readonly { weight: number; cost: number; cover: string | undefined }[]) => {
  const total = drawn.reduce((sum, { weight }) => sum + weight, 0);
  return drawn.map(({ weight, cost, cover }, place) => ({
    id: `a${place}`,
    p: weight / total,
    cost,
    ...(cover === undefined ? {} : { cover }),
  }));
};

it('no other order is cheaper, with and without covers', () => {
  fc.assert(
    fc.property(fc.array(action, { minLength: 1, maxLength: 5 }), (drawn) => {
      const actions = actionsOf(drawn);
      const cheapest = everyRepairOrder(actions, covers)[0]?.expectedCost ?? Number.NaN;
      expect(bestRepairOrder(actions, covers).expectedCost).toBeCloseTo(cheapest, 9);
    }),
    { numRuns: 100, seed: 20260713 },
  );
});

it('throws on a cover whose opening has no cost', () => {
  expect(() => bestRepairOrder([{ id: 'a', p: 1, cost: 1, cover: 'toString' }], {})).toThrow(
    /no opening cost/,
  );
});
