import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Raw water to blend past a softener so that a wanted hardness is left.
 *
 * $$ f = \frac{H_t - H_l}{H - H_l}, \quad Q_b = f Q, \quad Q_s = (1 - f) Q $$ with H_l the hardness leaking through the bed.
 *
 * Valid for a wanted hardness between the leakage and the raw hardness.
 * Source: conservation of mass. Checked: checks/src/published/softening.ts (S3, S18).
 * @throws RangeError when the wanted hardness lies outside leakage and raw hardness, or the flow is negative.
 * @example
 * ```ts
 * blendPast.compute({ hardness: 4.9, wantedHardness: 2, leakage: 0, totalFlow: 1e-4 }).blendFraction // => 0.408163
 * ```
 */
export const blendPast = equation(
  {
    key: 'blend-past',
    title: 'equation.blend-past',
    words: 'formula.blend-past',
    inputs: {
      hardness: { symbol: 'H', kind: 'hardness' },
      wantedHardness: { symbol: 'H_t', kind: 'hardness' },
      leakage: { symbol: 'H_l', kind: 'hardness' },
      totalFlow: { symbol: 'Q', kind: 'flow' },
    },
    outputs: {
      blendFraction: { symbol: 'f', kind: 'share' },
      blendFlow: { symbol: 'Q_b', kind: 'flow' },
      softenedFlow: { symbol: 'Q_s', kind: 'flow' },
    },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ hardness, wantedHardness, leakage, totalFlow }) => {
    requireNotNegative('leakage', leakage);
    requireNotNegative('wantedHardness - leakage', wantedHardness - leakage);
    requirePositive('hardness - leakage', hardness - leakage);
    requireNotNegative('hardness - wantedHardness', hardness - wantedHardness);
    requireNotNegative('totalFlow', totalFlow);
    const blendFraction = (wantedHardness - leakage) / (hardness - leakage);
    return {
      blendFraction,
      blendFlow: blendFraction * totalFlow,
      softenedFlow: (1 - blendFraction) * totalFlow,
    };
  },
);
