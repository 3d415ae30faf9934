import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { day, year } from '../settings/calendar.ts';

/**
 * Salt and water that regenerations take in a year.
 *
 * $$ m_a = m \frac{a}{t}, \quad V_a = V \frac{a}{t} $$ with a one year.
 *
 * Valid at an even use over the year. Source: definition.
 * @throws RangeError on a negative mass or volume or a non-positive time.
 * @example
 * ```ts
 * yearlyUse.compute({ saltMass: 7.26, regenerationWater: 0.4, serviceTime: 345600 }).saltPerYear // => 662.929
 * ```
 */
export const yearlyUse = equation(
  {
    key: 'yearly-use',
    title: 'equation.yearly-use',
    words: 'formula.yearly-use',
    inputs: {
      saltMass: { symbol: 'm', kind: 'mass' },
      regenerationWater: { symbol: 'V', kind: 'volume' },
      serviceTime: { symbol: 't', kind: 'time' },
    },
    outputs: {
      saltPerYear: { symbol: 'm_a', kind: 'mass' },
      waterPerYear: { symbol: 'V_a', kind: 'volume' },
    },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ saltMass, regenerationWater, serviceTime }) => {
    requireNotNegative('saltMass', saltMass);
    requireNotNegative('regenerationWater', regenerationWater);
    requirePositive('serviceTime', serviceTime);
    const times = year / serviceTime;
    return { saltPerYear: saltMass * times, waterPerYear: regenerationWater * times };
  },
);

/**
 * Regeneration water for each equivalent removed.
 *
 * $$ v = V / X $$
 *
 * Valid always. Madison Metropolitan Sewerage District asks at most 2.5 gal for 1000 grains (7.3 L/eq).
 * Source: definition.
 * @throws RangeError on a negative volume or a non-positive exchange.
 * @example
 * ```ts
 * waterPerExchange.compute({ regenerationWater: 0.4, exchange: 52 }).waterPerExchange // => 0.00769231
 * ```
 */
export const waterPerExchange = equation(
  {
    key: 'water-per-exchange',
    title: 'equation.water-per-exchange',
    words: 'formula.water-per-exchange',
    inputs: {
      regenerationWater: { symbol: 'V', kind: 'volume' },
      exchange: { symbol: 'X', kind: 'exchange' },
    },
    outputs: { waterPerExchange: { symbol: 'v', kind: 'water-per-exchange' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ regenerationWater, exchange }) => {
    requireNotNegative('regenerationWater', regenerationWater);
    requirePositive('exchange', exchange);
    return { waterPerExchange: regenerationWater / exchange };
  },
);

/**
 * What a leak sends to drain in a day.
 *
 * $$ V = Q \cdot 86400\,\mathrm{s} $$
 *
 * Valid for a steady leak. Source: definition.
 * @throws RangeError on a negative flow.
 * @example
 * ```ts
 * leakPerDay.compute({ leakFlow: 1e-6 }).leakPerDay // => 0.0864
 * ```
 */
export const leakPerDay = equation(
  {
    key: 'leak-per-day',
    title: 'equation.leak-per-day',
    words: 'formula.leak-per-day',
    inputs: { leakFlow: { symbol: 'Q', kind: 'flow' } },
    outputs: { leakPerDay: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ leakFlow }) => {
    requireNotNegative('leakFlow', leakFlow);
    return { leakPerDay: leakFlow * day };
  },
);
