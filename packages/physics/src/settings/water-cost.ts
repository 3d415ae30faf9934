import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * What water and its way to the sewer cost.
 *
 * $$ C = V (p_w + p_e) $$
 *
 * Source: definition; prices are the site's. Checked: water-cost.test.ts.
 * @throws RangeError on a negative volume or price.
 * @example
 * ```ts
 * waterCost.compute({ waterVolume: 1.1, waterPrice: 2.4, sewerPrice: 3 }).waterCost // => 5.94
 * ```
 */
export const waterCost = equation(
  {
    key: 'water-cost',
    title: 'equation.water-cost',
    words: 'formula.water-cost',
    inputs: {
      waterVolume: { symbol: 'V', kind: 'volume' },
      waterPrice: { symbol: 'p_w', kind: 'price-volume' },
      sewerPrice: { symbol: 'p_e', kind: 'price-volume' },
    },
    outputs: { waterCost: { symbol: 'C', kind: 'money' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ waterVolume, waterPrice, sewerPrice }) => {
    requireNotNegative('waterVolume', waterVolume);
    requireNotNegative('waterPrice', waterPrice);
    requireNotNegative('sewerPrice', sewerPrice);
    return { waterCost: waterVolume * (waterPrice + sewerPrice) };
  },
);

/**
 * Water of a year: what regenerations send to drain and what leaks there meanwhile.
 *
 * $$ V = V_r + V_l $$
 *
 * Source: conservation of mass. Checked: water-cost.test.ts.
 * @throws RangeError on a negative volume.
 * @example
 * ```ts
 * waterWithLeak.compute({ regenerationPerYear: 50, leakPerYear: 400 }).waterPerYear // => 450
 * ```
 */
export const waterWithLeak = equation(
  {
    key: 'water-with-leak',
    title: 'equation.water-with-leak',
    words: 'formula.water-with-leak',
    inputs: {
      regenerationPerYear: { symbol: 'V_r', kind: 'volume' },
      leakPerYear: { symbol: 'V_l', kind: 'volume' },
    },
    outputs: { waterPerYear: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ regenerationPerYear, leakPerYear }) => {
    requireNotNegative('regenerationPerYear', regenerationPerYear);
    requireNotNegative('leakPerYear', leakPerYear);
    return { waterPerYear: regenerationPerYear + leakPerYear };
  },
);

/**
 * Water that one cycle of a filter sends to drain.
 *
 * $$ V = V_{bw} + V_{fr} $$
 *
 * Source: conservation of mass. Checked: water-cost.test.ts.
 * @throws RangeError on a negative volume.
 * @example
 * ```ts
 * filterWater.compute({ backwashWater: 0.17, fastRinseWater: 0.09 }).regenerationWater // => 0.26
 * ```
 */
export const filterWater = equation(
  {
    key: 'filter-water',
    title: 'equation.filter-water',
    words: 'formula.filter-water',
    inputs: {
      backwashWater: { symbol: 'V_bw', kind: 'volume' },
      fastRinseWater: { symbol: 'V_fr', kind: 'volume' },
    },
    outputs: { regenerationWater: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ backwashWater, fastRinseWater }) => {
    requireNotNegative('backwashWater', backwashWater);
    requireNotNegative('fastRinseWater', fastRinseWater);
    return { regenerationWater: backwashWater + fastRinseWater };
  },
);
