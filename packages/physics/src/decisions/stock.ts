import { normalQuantile } from '../measure/normal.ts';
import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { poissonCdf, poissonQuantile, poissonShortfall } from './poisson.ts';

/**
 * How many to carry once, when demand is spread normally and too few and too many cost differently.
 *
 * $$ r = \frac{c_u}{c_u + c_o},\qquad S = m + s\,\Phi^{-1}(r) $$
 *
 * Source: the newsvendor problem (memory). Checked: checks/src/published/decision.ts (D6).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * newsvendorNormal.compute({ mean: 100, standardDeviation: 20, underage: 30, overage: 10 }).order // => 113.49
 * ```
 */
export const newsvendorNormal = equation(
  {
    key: 'newsvendor-normal',
    title: 'equation.newsvendor-normal',
    words: 'formula.newsvendor-normal',
    inputs: {
      mean: { symbol: 'm', kind: 'count' },
      standardDeviation: { symbol: 's', kind: 'count' },
      underage: { symbol: 'c_u', kind: 'money' },
      overage: { symbol: 'c_o', kind: 'money' },
    },
    outputs: {
      criticalRatio: { symbol: 'r', kind: 'share' },
      order: { symbol: 'S', kind: 'count' },
    },
    range: [],
    source: 'newsvendor',
    status: 'memory',
  },
  ({ mean, standardDeviation, underage, overage }) => {
    requirePositive('mean', mean);
    requirePositive('standardDeviation', standardDeviation);
    requirePositive('underage', underage);
    requirePositive('overage', overage);
    const criticalRatio = underage / (underage + overage);
    return { criticalRatio, order: mean + standardDeviation * normalQuantile(criticalRatio) };
  },
);

/**
 * How many to carry once, when single pieces are wanted by chance (Poisson): the smallest number that serves with the
 * critical ratio at least.
 *
 * Source: the newsvendor problem (memory). Checked: checks/src/published/decision.ts (D7).
 * @throws RangeError on a mean that is not positive or a ratio outside 0 to 1.
 * @example
 * ```ts
 * newsvendorPoisson.compute({ mean: 4, criticalRatio: 0.75 }).order // => 5
 * ```
 */
export const newsvendorPoisson = equation(
  {
    key: 'newsvendor-poisson',
    title: 'equation.newsvendor-poisson',
    words: 'formula.newsvendor-poisson',
    inputs: {
      mean: { symbol: 'm', kind: 'count' },
      criticalRatio: { symbol: 'r', kind: 'share' },
    },
    outputs: { order: { symbol: 'S', kind: 'count' } },
    range: [],
    source: 'newsvendor',
    status: 'memory',
  },
  ({ mean, criticalRatio }) => ({ order: poissonQuantile(mean, criticalRatio) }),
);

/**
 * What a stock of single pieces does that is filled up one for one while orders are under way.
 *
 * $$ \beta = F(S-1),\qquad p_0 = F(S),\qquad B = \sum_{k>S}(k-S)\,p(k) $$
 *
 * F: Poisson with the demand of one lead time. Source: Hadley and Whitin (1963), from memory.
 * Checked: checks/src/published/decision.ts (D8).
 * @throws RangeError on a demand that is not positive or a stock that is not whole.
 * @example
 * ```ts
 * baseStock.compute({ leadTimeDemand: 2, stock: 5 }).fillRate // => 0.94735
 * ```
 */
export const baseStock = equation(
  {
    key: 'base-stock',
    title: 'equation.base-stock',
    words: 'formula.base-stock',
    inputs: {
      leadTimeDemand: { symbol: 'm', kind: 'count' },
      stock: { symbol: 'S', kind: 'count' },
    },
    outputs: {
      fillRate: { symbol: 'β', kind: 'share' },
      noBackorder: { symbol: 'p₀', kind: 'share' },
      expectedBackorders: { symbol: 'B', kind: 'count' },
    },
    range: [],
    source: 'hadley-whitin-1963',
    status: 'memory',
  },
  ({ leadTimeDemand, stock }) => ({
    fillRate: stock === 0 ? 0 : poissonCdf(leadTimeDemand, stock - 1),
    noBackorder: poissonCdf(leadTimeDemand, stock),
    expectedBackorders: poissonShortfall(leadTimeDemand, stock),
  }),
);

/**
 * The smallest stock that fills a share of what is asked for at once.
 *
 * @throws RangeError on a demand that is not positive or a share outside 0 to 1.
 * @example
 * ```ts
 * smallestStock(2, 0.95) // => 6
 * ```
 */
export const smallestStock = (leadTimeDemand: number, fillRate: number): number =>
  poissonQuantile(leadTimeDemand, fillRate) + 1;
