import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * How far the positive and negative charges of an analysis fail to meet.
 *
 * $$ B = \frac{\Sigma_+ - \Sigma_-}{\Sigma_+ + \Sigma_-} $$
 *
 * Valid for any water. The handbook's verdict: 5 % fine, 5 to 12 % odd, above questionable (ours).
 * Source: electroneutrality; form as used by USGS and Ohio EPA. Checked: checks/src/published/waters.ts.
 * @throws RangeError on negative sums or when both are zero.
 * @example
 * ```ts
 * chargeBalance.compute({ cations: 4.953, anions: 4.672 }).chargeBalance // => 0.0291948
 * ```
 */
export const chargeBalance = equation(
  {
    key: 'charge-balance',
    title: 'equation.charge-balance',
    words: 'formula.charge-balance',
    inputs: {
      cations: { symbol: 'Σ₊', kind: 'equivalent-concentration' },
      anions: { symbol: 'Σ₋', kind: 'equivalent-concentration' },
    },
    outputs: { chargeBalance: { symbol: 'B', kind: 'share' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ cations, anions }) => {
    requireNotNegative('cations', cations);
    requireNotNegative('anions', anions);
    if (cations + anions === 0) throw new RangeError('cations and anions must not both be 0');
    return { chargeBalance: (cations - anions) / (cations + anions) };
  },
);
