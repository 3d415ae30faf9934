import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * How long the brine takes to be drawn.
 *
 * $$ t = V / Q_b $$ with the draw flow of brine alone, not what runs to drain.
 *
 * Valid while the draw flow holds. Source: definition. Checked: checks/src/published/softening.ts (S12, S14).
 * @throws RangeError on a negative volume or a non-positive flow.
 * @example
 * ```ts
 * drawTime.compute({ brineVolume: 0.0226, drawFlow: 3.15e-5 }).drawTime // => 717.46
 * ```
 */
export const drawTime = equation(
  {
    key: 'draw-time',
    title: 'equation.draw-time',
    words: 'formula.draw-time',
    inputs: {
      brineVolume: { symbol: 'V', kind: 'volume' },
      drawFlow: { symbol: 'Q_b', kind: 'flow' },
    },
    outputs: { drawTime: { symbol: 't', kind: 'time' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ brineVolume, drawFlow }) => {
    requireNotNegative('brineVolume', brineVolume);
    requirePositive('drawFlow', drawFlow);
    return { drawTime: brineVolume / drawFlow };
  },
);

/**
 * How strong the brine is when it meets the bed: drawn brine and motive water, each at its own density.
 *
 * $$ w = \frac{w_b\,\rho_b\,Q_b}{\rho_b\,Q_b + \rho_w\,Q_m} $$
 *
 * Valid always; 5 to 10 % is usual (Davis 2010), about 10 % the trade's aim.
 * Source: conservation of mass. Checked: checks/src/published/softening.ts (S12, S14).
 * @throws RangeError on a negative flow or mass fraction, a non-positive density, or no flow at all.
 * @example
 * ```ts
 * dilutedBrine.compute({ massFraction: 0.26395, drawFlow: 3.155e-5, brineDensity: 1202.8, motiveFlow: 4.416e-5, waterDensity: 999.01 }).dilutedMassFraction // => 0.12206
 * ```
 */
export const dilutedBrine = equation(
  {
    key: 'diluted-brine',
    title: 'equation.diluted-brine',
    words: 'formula.diluted-brine',
    inputs: {
      massFraction: { symbol: 'w_b', kind: 'mass-fraction' },
      drawFlow: { symbol: 'Q_b', kind: 'flow' },
      brineDensity: { symbol: 'ρ_b', kind: 'density' },
      motiveFlow: { symbol: 'Q_m', kind: 'flow' },
      waterDensity: { symbol: 'ρ_w', kind: 'density' },
    },
    outputs: { dilutedMassFraction: { symbol: 'w', kind: 'mass-fraction' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ massFraction, drawFlow, brineDensity, motiveFlow, waterDensity }) => {
    requireNotNegative('massFraction', massFraction);
    requireNotNegative('drawFlow', drawFlow);
    requireNotNegative('motiveFlow', motiveFlow);
    requirePositive('brineDensity', brineDensity);
    requirePositive('waterDensity', waterDensity);
    requirePositive('drawFlow + motiveFlow', drawFlow + motiveFlow);
    const brine = brineDensity * drawFlow;
    return { dilutedMassFraction: (massFraction * brine) / (brine + waterDensity * motiveFlow) };
  },
);
