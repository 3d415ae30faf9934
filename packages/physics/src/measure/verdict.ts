import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { conformanceProbability, type Estimate, type Limits, requireRisk, usualRisk } from './conformance.ts';

/** What a measurement says about a limit. */
export type Verdict =
  | { readonly verdict: 'pass' | 'fail'; readonly pConform: number }
  | {
      readonly verdict: 'not-decided';
      readonly pConform: number;
      /** Standard uncertainty at which the same reading would decide; absent on the limit itself, where none would. */
      readonly wouldDecide?: number;
    };

/** Smallest share of the present uncertainty worth asking for: below it the reading stands on the limit. */
const finest = 1e-9;

/** The largest uncertainty, below the present one, at which the same reading passes or fails. */
const decidingUncertainty = (measured: Estimate & Limits, risk: number): number | undefined => {
  const surplus = (u: number): number => {
    const p = conformanceProbability({ ...measured, u });
    return Math.min(1 - p, p) - risk;
  };
  const least = measured.u * finest;
  return surplus(least) > 0 ? undefined : bracketedRoot(surplus, least, measured.u);
};

/**
 * Verdict of a measurement against its limits: pass or fail only where the risk of being wrong is small.
 *
 * Pass where the value keeps to its limits with probability 1 − risk at least, fail where with risk at most, else not
 * decided, with the uncertainty that would decide at the same reading.
 * Source: JCGM 106:2012, from memory. Checked: verdict.property.test.ts; probability in metrology.ts.
 * @throws RangeError on an uncertainty that is not positive, crossing limits or a risk outside 0 to 0.5.
 * @example
 * ```ts
 * judge({ estimate: 16, u: 2, upper: 17.1 }).verdict // => 'not-decided'
 * ```
 */
export const judge = (measured: Estimate & Limits & { readonly risk?: number }): Verdict => {
  const risk = measured.risk ?? usualRisk;
  requireRisk(risk);
  const pConform = conformanceProbability(measured);
  if (pConform >= 1 - risk) return { verdict: 'pass', pConform };
  if (pConform <= risk) return { verdict: 'fail', pConform };
  const wouldDecide = decidingUncertainty(measured, risk);
  return { verdict: 'not-decided', pConform, ...(wouldDecide === undefined ? {} : { wouldDecide }) };
};

/**
 * How many repeats bring the uncertainty down to what is needed: chance parts shrink with the root of their number,
 * parts common to every reading do not. Absent where no number would do.
 *
 * @throws RangeError on a negative or non-finite argument.
 * @example
 * ```ts
 * repeatsToDecide({ needed: 0.5, eachReading: 1, common: 0.3 }) // => 7
 * ```
 */
export const repeatsToDecide = (uncertainty: {
  readonly needed: number;
  readonly eachReading: number;
  readonly common: number;
}): number | undefined => {
  const { needed, eachReading, common } = uncertainty;
  requirePositive('needed', needed);
  requireNotNegative('eachReading', eachReading);
  requireNotNegative('common', common);
  if (common >= needed) return undefined;
  return Math.max(1, Math.ceil(eachReading ** 2 / (needed ** 2 - common ** 2)));
};
