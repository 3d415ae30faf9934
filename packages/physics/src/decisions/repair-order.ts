import {
  type CoverCosts,
  expectedRepairCost,
  openingCost,
  type RepairAction,
  type RepairOrder,
  requireActions,
} from './repair-cost.ts';

/** Actions done in one go, and what they are worth per cost: the bigger, the earlier. */
type Block = { readonly actions: readonly RepairAction[]; readonly p: number; readonly cost: number };

const blockOf = (actions: readonly RepairAction[], opening = 0): Block => ({
  actions,
  p: actions.reduce((sum, action) => sum + action.p, 0),
  cost: actions.reduce((sum, action) => sum + action.cost, opening),
});

const single = (action: RepairAction): Block => blockOf([action]);

/** p/c falling, cross-multiplied. Ties keep the order they came in. */
const worthMoreFirst = (a: Block, b: Block): number => b.p * a.cost - a.p * b.cost;

/** A cover's best beginning (opening it and the actions that then pay) as one block; the rest follow singly. */
const coverBlocks = (actions: readonly RepairAction[], opening: number): readonly Block[] => {
  const sorted = actions.map(single).toSorted(worthMoreFirst);
  const beginnings = sorted.map((_block, index) =>
    blockOf(
      sorted.slice(0, index + 1).flatMap((block) => block.actions),
      opening,
    ),
  );
  const best = beginnings.toSorted(worthMoreFirst)[0];
  return best === undefined ? [] : [best, ...sorted.slice(best.actions.length)];
};

/**
 * The order of repair actions with the least expected cost, where some lie under a cover that is opened once.
 *
 * One fault, actions that do not help one another: by p/c, falling. Under a cover the best beginning counts as one
 * action with the opening in its cost. Exact for one level of covers when nothing need be closed before testing.
 * Source: Kadane and Simon (1977); Ottosen and Jensen (arXiv:1203.3502), abstract seen.
 * Checked: checks/src/published/decision.ts (D1, D3) and against every order (repair-order.property.test.ts).
 * @throws RangeError on a negative probability, a cost that is not positive or a cover without a cost.
 * @example
 * ```ts
 * bestRepairOrder([{ id: 'A', p: 0.5, cost: 10 }, { id: 'B', p: 0.3, cost: 3 }, { id: 'C', p: 0.2, cost: 1 }]).expectedCost // => 8.4
 * ```
 */
export const bestRepairOrder = (actions: readonly RepairAction[], covers: CoverCosts = {}): RepairOrder => {
  requireActions(actions);
  const free = actions.filter((action) => action.cover === undefined).map(single);
  const names = [...new Set(actions.flatMap((action) => action.cover ?? []))];
  const covered = names.flatMap((name) =>
    coverBlocks(
      actions.filter((action) => action.cover === name),
      openingCost(covers, name),
    ),
  );
  const order = [...free, ...covered].toSorted(worthMoreFirst).flatMap((block) => block.actions);
  return { order: order.map((action) => action.id), expectedCost: expectedRepairCost(order, covers) };
};
