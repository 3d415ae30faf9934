import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Limits about an expected flow.
 *
 * $$ Q_{\pm} = Q (1 \pm \tau) $$
 *
 * Source: definition; the tolerance is the caller's. Checked: tolerance.test.ts.
 * @throws RangeError on a negative flow or a tolerance outside 0 to 1.
 * @example
 * ```ts
 * flowLimits.compute({ expectedFlow: 2.839e-5, tolerance: 0.1 }).lowerFlow // => 2.5551e-5
 * ```
 */
export const flowLimits = equation(
  {
    key: 'flow-limits',
    title: 'equation.flow-limits',
    words: 'formula.flow-limits',
    inputs: {
      expectedFlow: { symbol: 'Q', kind: 'flow' },
      tolerance: { symbol: 'τ', kind: 'share' },
    },
    outputs: {
      lowerFlow: { symbol: 'Q₋', kind: 'flow' },
      upperFlow: { symbol: 'Q₊', kind: 'flow' },
    },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ expectedFlow, tolerance }) => {
    const { lower, upper } = about(expectedFlow, tolerance);
    return { lowerFlow: lower, upperFlow: upper };
  },
);

/**
 * Limits about an expected volume.
 *
 * $$ V_{\pm} = V (1 \pm \tau) $$
 *
 * Source: definition; the tolerance is the caller's. Checked: tolerance.test.ts.
 * @throws RangeError on a negative volume or a tolerance outside 0 to 1.
 * @example
 * ```ts
 * volumeLimits.compute({ expectedVolume: 0.03, tolerance: 0.05 }).upperVolume // => 0.0315
 * ```
 */
export const volumeLimits = equation(
  {
    key: 'volume-limits',
    title: 'equation.volume-limits',
    words: 'formula.volume-limits',
    inputs: {
      expectedVolume: { symbol: 'V', kind: 'volume' },
      tolerance: { symbol: 'τ', kind: 'share' },
    },
    outputs: {
      lowerVolume: { symbol: 'V₋', kind: 'volume' },
      upperVolume: { symbol: 'V₊', kind: 'volume' },
    },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ expectedVolume, tolerance }) => {
    const { lower, upper } = about(expectedVolume, tolerance);
    return { lowerVolume: lower, upperVolume: upper };
  },
);

const about = (expected: number, tolerance: number): { readonly lower: number; readonly upper: number } => {
  requireNotNegative('expected', expected);
  requireNotNegative('tolerance', tolerance);
  if (tolerance > 1) throw new RangeError(`tolerance must not be above 1, got ${tolerance}`);
  return { lower: expected * (1 - tolerance), upper: expected * (1 + tolerance) };
};
