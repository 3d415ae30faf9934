import { equation } from '../meta/equation.ts';

const requireShare = (name: string, value: number): void => {
  if (!(value >= 0 && value <= 1)) throw new RangeError(`${name} must lie between 0 and 1, got ${value}`);
};

/** A result that cannot occur leaves nothing to divide by; the prior then stands. */
const share = (part: number, other: number, prior: number): number =>
  part + other > 0 ? part / (part + other) : prior;

/**
 * Probability of a fault after one test that shows it or not.
 *
 * $$ p_+ = \frac{p\,s}{p\,s + (1-p)(1-c)},\qquad p_- = \frac{p(1-s)}{p(1-s) + (1-p)c} $$
 *
 * s: share of faulty units the test shows; c: share of sound units it clears. A result that cannot occur leaves p.
 * Source: Bayes' rule. Checked: checks/src/published/decision.ts (D5).
 * @throws RangeError on an argument outside 0 to 1.
 * @example
 * ```ts
 * bayesUpdate.compute({ prior: 0.3, sensitivity: 0.9, specificity: 0.8 }).posteriorPositive // => 0.658537
 * ```
 */
export const bayesUpdate = equation(
  {
    key: 'bayes-update',
    title: 'equation.bayes-update',
    words: 'formula.bayes-update',
    inputs: {
      prior: { symbol: 'p', kind: 'share' },
      sensitivity: { symbol: 's', kind: 'share' },
      specificity: { symbol: 'c', kind: 'share' },
    },
    outputs: {
      posteriorPositive: { symbol: 'p₊', kind: 'share' },
      posteriorNegative: { symbol: 'p₋', kind: 'share' },
    },
    range: [],
    source: 'bayes',
    status: 'seen',
  },
  ({ prior, sensitivity, specificity }) => {
    requireShare('prior', prior);
    requireShare('sensitivity', sensitivity);
    requireShare('specificity', specificity);
    const sound = 1 - prior;
    return {
      posteriorPositive: share(prior * sensitivity, sound * (1 - specificity), prior),
      posteriorNegative: share(prior * (1 - sensitivity), sound * specificity, prior),
    };
  },
);
