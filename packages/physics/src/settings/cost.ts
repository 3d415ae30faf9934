import { requireFinite, requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * What salt, water and its way to the sewer cost.
 *
 * $$ C = m p_s + V (p_w + p_e) $$
 *
 * Source: definition; prices are the site's. Checked: settings.test.ts.
 * @throws RangeError on a negative amount or price.
 * @example
 * ```ts
 * runningCost.compute({ saltPerYear: 1000, waterPerYear: 50, saltPrice: 0.4, waterPrice: 2.4, sewerPrice: 3 }).costPerYear // => 670
 * ```
 */
export const runningCost = equation(
  {
    key: 'running-cost',
    title: 'equation.running-cost',
    words: 'formula.running-cost',
    inputs: {
      saltPerYear: { symbol: 'm', kind: 'mass' },
      waterPerYear: { symbol: 'V', kind: 'volume' },
      saltPrice: { symbol: 'p_s', kind: 'price-mass' },
      waterPrice: { symbol: 'p_w', kind: 'price-volume' },
      sewerPrice: { symbol: 'p_e', kind: 'price-volume' },
    },
    outputs: { costPerYear: { symbol: 'C', kind: 'money' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ saltPerYear, waterPerYear, saltPrice, waterPrice, sewerPrice }) => {
    requireNotNegative('saltPerYear', saltPerYear);
    requireNotNegative('waterPerYear', waterPerYear);
    requireNotNegative('saltPrice', saltPrice);
    requireNotNegative('waterPrice', waterPrice);
    requireNotNegative('sewerPrice', sewerPrice);
    return { costPerYear: saltPerYear * saltPrice + waterPerYear * (waterPrice + sewerPrice) };
  },
);

/**
 * What the found settings use more than the advised ones, a year; negative where they use less.
 *
 * $$ \Delta m = m_f - m_a, \quad \Delta V = V_f - V_a $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a non-finite argument.
 * @example
 * ```ts
 * yearlyDifference.compute({ foundSalt: 900, advisedSalt: 600, foundWater: 40, advisedWater: 50 }).waterDifference // => -10
 * ```
 */
export const yearlyDifference = equation(
  {
    key: 'yearly-difference',
    title: 'equation.yearly-difference',
    words: 'formula.yearly-difference',
    inputs: {
      foundSalt: { symbol: 'm_f', kind: 'mass' },
      advisedSalt: { symbol: 'm_a', kind: 'mass' },
      foundWater: { symbol: 'V_f', kind: 'volume' },
      advisedWater: { symbol: 'V_a', kind: 'volume' },
    },
    outputs: {
      saltDifference: { symbol: 'Δm', kind: 'mass' },
      waterDifference: { symbol: 'ΔV', kind: 'volume' },
    },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ foundSalt, advisedSalt, foundWater, advisedWater }) => {
    for (const [name, value] of Object.entries({ foundSalt, advisedSalt, foundWater, advisedWater }))
      requireFinite(name, value);
    return { saltDifference: foundSalt - advisedSalt, waterDifference: foundWater - advisedWater };
  },
);

/**
 * What the found settings cost more than the advised ones, a year.
 *
 * $$ \Delta C = C_f - C_a $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a non-finite argument.
 * @example
 * ```ts
 * costDifference.compute({ foundCost: 1394, advisedCost: 530 }).costDifference // => 864
 * ```
 */
export const costDifference = equation(
  {
    key: 'cost-difference',
    title: 'equation.cost-difference',
    words: 'formula.cost-difference',
    inputs: {
      foundCost: { symbol: 'C_f', kind: 'money' },
      advisedCost: { symbol: 'C_a', kind: 'money' },
    },
    outputs: { costDifference: { symbol: 'ΔC', kind: 'money' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ foundCost, advisedCost }) => {
    requireFinite('foundCost', foundCost);
    requireFinite('advisedCost', advisedCost);
    return { costDifference: foundCost - advisedCost };
  },
);

const inch = 0.0254;

/**
 * Air gap that the end of a drain line must keep above the flood rim.
 *
 * $$ g = \max(2 d, 1\,\mathrm{in}) $$
 *
 * Source: New Jersey plumbing code 2018, chapter 9. Local codes outrank it. Checked: settings.test.ts.
 * @throws RangeError on a negative diameter.
 * @example
 * ```ts
 * airGapNeeded.compute({ pipeDiameter: 0.01905 }).airGap // => 0.0381
 * ```
 */
export const airGapNeeded = equation(
  {
    key: 'air-gap-needed',
    title: 'equation.air-gap-needed',
    words: 'formula.air-gap-needed',
    inputs: { pipeDiameter: { symbol: 'd', kind: 'length' } },
    outputs: { airGap: { symbol: 'g', kind: 'length' } },
    range: [],
    source: 'plumbing-code-nj-2018',
    status: 'seen',
  },
  ({ pipeDiameter }) => {
    requireNotNegative('pipeDiameter', pipeDiameter);
    return { airGap: Math.max(2 * pipeDiameter, inch) };
  },
);
