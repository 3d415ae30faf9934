import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Most that a bed can hold of calcium against sodium, with a constant separation factor.
 *
 * $$ q_{Ca} = \frac{q_T\,c_{Ca}}{c_{Ca} + c_{Na}/\alpha}, \quad n = q_{Ca} / c_{Ca} $$ with n bed volumes of water.
 *
 * Valid for dilute water and a textbook factor (1.9). Never with a mass-action constant: at 4 meq/L that gives 60.
 * Source: Davis (2010), example 8-1. Status: seen.
 * Checked: checks/src/published/softening.ts (S1, S2).
 * @throws RangeError on non-positive capacity, calcium or factor, or negative sodium.
 * @example
 * ```ts
 * separationCapacity.compute({ totalCapacity: 2000, calcium: 1.4, sodium: 2.6, separationFactor: 1.9 }).calciumLoading // => 1011.4
 * ```
 */
export const separationCapacity = equation(
  {
    key: 'separation-capacity',
    title: 'equation.separation-capacity',
    words: 'formula.separation-capacity',
    inputs: {
      totalCapacity: { symbol: 'q_T', kind: 'capacity' },
      calcium: { symbol: 'Ca', kind: 'equivalent-concentration' },
      sodium: { symbol: 'Na', kind: 'equivalent-concentration' },
      separationFactor: { symbol: 'α', kind: 'ratio' },
    },
    outputs: {
      calciumLoading: { symbol: 'q_Ca', kind: 'capacity' },
      bedVolumes: { symbol: 'n', kind: 'bed-volumes' },
    },
    range: [],
    source: 'davis-2010-softening',
    status: 'seen',
  },
  ({ totalCapacity, calcium, sodium, separationFactor }) => {
    requirePositive('totalCapacity', totalCapacity);
    requirePositive('calcium', calcium);
    requireNotNegative('sodium', sodium);
    requirePositive('separationFactor', separationFactor);
    const calciumLoading = (totalCapacity * calcium) / (calcium + sodium / separationFactor);
    return { calciumLoading, bedVolumes: calciumLoading / calcium };
  },
);

/**
 * What stays in solution when resin in one form is stirred into a solution of another ion of one charge.
 *
 * $$ K = \frac{(c_0 - x)\,(n_0 + c_0 - x)}{(X - c_0 + x)\,x} $$ solved for x, the ion left in solution; the resin starts wholly in the
 * counter-ion's form, n₀ is the counter-ion already dissolved. All in equivalents of the whole batch.
 *
 * Valid for two ions of one charge and a constant selectivity.
 * Source: ENVE 303 tutorial 8 (2020-21), problem 2. Status: seen.
 * Checked: checks/src/published/softening.ts (S7).
 * @throws RangeError on negative amounts, a non-positive selectivity or less exchange than ion.
 * @example
 * ```ts
 * batchExchange.compute({ exchange: 0.02, dissolvedIon: 0.002, dissolvedCounterIon: 0.0005, selectivity: 1.46 }).remainingIon // => 0.000162
 * ```
 */
export const batchExchange = equation(
  {
    key: 'batch-exchange',
    title: 'equation.batch-exchange',
    words: 'formula.batch-exchange',
    inputs: {
      exchange: { symbol: 'X', kind: 'exchange' },
      dissolvedIon: { symbol: 'c₀', kind: 'exchange' },
      dissolvedCounterIon: { symbol: 'n₀', kind: 'exchange' },
      selectivity: { symbol: 'K', kind: 'ratio' },
    },
    outputs: { remainingIon: { symbol: 'x', kind: 'exchange' } },
    range: [],
    source: 'enve-303',
    status: 'seen',
  },
  ({ exchange, dissolvedIon, dissolvedCounterIon, selectivity }) => {
    requireNotNegative('dissolvedIon', dissolvedIon);
    requireNotNegative('dissolvedCounterIon', dissolvedCounterIon);
    requirePositive('selectivity', selectivity);
    requirePositive('exchange - dissolvedIon', exchange - dissolvedIon);
    const charge = dissolvedIon + dissolvedCounterIon;
    const square = selectivity - 1;
    const linear = selectivity * (exchange - dissolvedIon) + dissolvedIon + charge;
    const constant = dissolvedIon * charge;
    const root = Math.sqrt(linear ** 2 + 4 * square * constant);
    return { remainingIon: (2 * constant) / (linear + root) };
  },
);
