import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { combinedUncertainty, coverage95, rectangular } from './combine.ts';

/**
 * Flow from a pail filled to a mark while a watch runs.
 *
 * $$ Q = V/t,\qquad (u_Q/Q)^2 = \left(\frac{a}{\sqrt3\,V}\right)^2 + (u_t/t)^2,\qquad U_{95} = 2u_Q $$
 *
 * The mark is true within ± a, every value as likely; the watch has a standard uncertainty u_t. First order.
 * Assumes: mark and watch independent, both relative uncertainties small.
 * Source: JCGM 100:2008, from memory. Checked: checks/src/published/metrology.ts (M7).
 * @throws RangeError on a volume or time that is not positive or a negative uncertainty.
 * @example
 * ```ts
 * pailRate.compute({ volume: 0.018927, markHalfWidth: 0.00018927, time: 62, timeUncertainty: 0.3 }).flow // => 3.05274e-4
 * ```
 */
export const pailRate = equation(
  {
    key: 'pail-rate',
    title: 'equation.pail-rate',
    words: 'formula.pail-rate',
    inputs: {
      volume: { symbol: 'V', kind: 'volume' },
      markHalfWidth: { symbol: 'a', kind: 'volume' },
      time: { symbol: 't', kind: 'time' },
      timeUncertainty: { symbol: 'u_t', kind: 'time' },
    },
    outputs: {
      flow: { symbol: 'Q', kind: 'flow' },
      flowUncertainty: { symbol: 'u_Q', kind: 'flow' },
      flowExpandedUncertainty: { symbol: 'U₉₅', kind: 'flow' },
    },
    range: [],
    source: 'jcgm-100',
    status: 'memory',
  },
  ({ volume, markHalfWidth, time, timeUncertainty }) => {
    requirePositive('volume', volume);
    requireNotNegative('markHalfWidth', markHalfWidth);
    requirePositive('time', time);
    requireNotNegative('timeUncertainty', timeUncertainty);
    const flow = volume / time;
    const relative = combinedUncertainty([rectangular(markHalfWidth) / volume, timeUncertainty / time]);
    const flowUncertainty = flow * relative;
    return { flow, flowUncertainty, flowExpandedUncertainty: coverage95 * flowUncertainty };
  },
);
