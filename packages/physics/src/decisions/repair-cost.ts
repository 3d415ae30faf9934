import { requireNotNegative, requirePositive } from '../meta/assert.ts';

/** Something to do that mends the fault with a probability; under a cover it waits until the cover is off. */
export type RepairAction = {
  readonly id: string;
  readonly p: number;
  readonly cost: number;
  readonly cover?: string;
};

/** What it costs to open each cover, once. */
export type CoverCosts = Readonly<Record<string, number>>;

export type RepairOrder = { readonly order: readonly string[]; readonly expectedCost: number };

export const openingCost = (covers: CoverCosts, cover: string): number => {
  const cost = Object.hasOwn(covers, cover) ? covers[cover] : undefined;
  if (cost === undefined) throw new RangeError(`no opening cost for cover ${cover}`);
  requireNotNegative('opening cost', cost);
  return cost;
};

export const requireActions = (actions: readonly RepairAction[]): void => {
  for (const { p, cost } of actions) {
    requireNotNegative('p', p);
    requirePositive('cost', cost);
  }
};

/**
 * Expected cost of trying actions in an order: each costs, with its cover if still shut, while the fault is unsolved.
 *
 * @throws RangeError on a cover without a cost.
 * @example
 * ```ts
 * expectedRepairCost([{ id: 'C', p: 0.2, cost: 1 }, { id: 'B', p: 0.3, cost: 3 }, { id: 'A', p: 0.5, cost: 10 }]) // => 8.4
 * ```
 */
export const expectedRepairCost = (order: readonly RepairAction[], covers: CoverCosts = {}): number => {
  const opened = new Set<string>();
  let unsolved = 1;
  let expected = 0;
  for (const { p, cost, cover } of order) {
    const opening = cover === undefined || opened.has(cover) ? 0 : openingCost(covers, cover);
    if (cover !== undefined) opened.add(cover);
    expected += unsolved * (cost + opening);
    unsolved -= p;
  }
  return expected;
};

const orders = (actions: readonly RepairAction[]): readonly (readonly RepairAction[])[] =>
  actions.length === 0
    ? [[]]
    : actions.flatMap((first, index) => orders(actions.toSpliced(index, 1)).map((rest) => [first, ...rest]));

/** More actions than this have too many orders to try them all. */
const mostToEnumerate = 8;

/**
 * Every order with its expected cost, cheapest first. The yardstick for `bestRepairOrder`; eight actions at most.
 *
 * @throws RangeError on more than eight actions, a negative probability or a cost that is not positive.
 * @example
 * ```ts
 * everyRepairOrder([{ id: 'A', p: 0.5, cost: 10 }, { id: 'B', p: 0.5, cost: 3 }]).length // => 2
 * ```
 */
export const everyRepairOrder = (
  actions: readonly RepairAction[],
  covers: CoverCosts = {},
): readonly RepairOrder[] => {
  requireActions(actions);
  if (actions.length > mostToEnumerate) throw new RangeError(`too many actions: ${actions.length}`);
  return orders(actions)
    .map((order) => ({
      order: order.map((action) => action.id),
      expectedCost: expectedRepairCost(order, covers),
    }))
    .toSorted((a, b) => a.expectedCost - b.expectedCost);
};
