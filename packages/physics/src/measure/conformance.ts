import { requireFinite, requirePositive } from '../meta/assert.ts';
import { normalCdf, normalQuantile } from './normal.ts';

/** What a value must keep to: at least, at most, or both. */
export type Limits =
  | { readonly lower: number; readonly upper?: number }
  | { readonly lower?: number; readonly upper: number };

export type Estimate = { readonly estimate: number; readonly u: number };

/** Risk of a wrong pass or a wrong fail that we take, unless a check says otherwise. */
export const usualRisk = 0.05;

export const requireRisk = (risk: number): void => {
  if (!(risk > 0 && risk < 0.5)) throw new RangeError(`risk must lie between 0 and 0.5, got ${risk}`);
};

const below = (limit: number | undefined, { estimate, u }: Estimate): number =>
  limit === undefined ? 0 : normalCdf((limit - estimate) / u);

const above = (limit: number | undefined, { estimate, u }: Estimate): number =>
  limit === undefined ? 0 : normalCdf((estimate - limit) / u);

/**
 * Probability that the true value keeps to its limits, given an estimate with a normal uncertainty.
 *
 * $$ p = 1 - \Phi\left(\frac{L - x}{u}\right) - \Phi\left(\frac{x - U}{u}\right) $$
 *
 * Assumes: nothing known of the value beforehand but the estimate.
 * Source: JCGM 106:2012, from memory. Checked: checks/src/published/metrology.ts (M1, M3, M5).
 * @throws RangeError on an uncertainty that is not positive or limits that cross.
 * @example
 * ```ts
 * conformanceProbability({ estimate: 13.6, u: 1.8, lower: 12.5, upper: 16.3 }) // => 0.66263
 * ```
 */
export const conformanceProbability = (measured: Estimate & Limits): number => {
  const { lower, upper } = measured;
  requireFinite('estimate', measured.estimate);
  requirePositive('u', measured.u);
  if (lower !== undefined && upper !== undefined && !(lower < upper))
    throw new RangeError(`limits must not cross, got ${lower} to ${upper}`);
  return Math.max(0, 1 - below(lower, measured) - above(upper, measured));
};

/** How the uncertainty of readings behaves near a limit: the same everywhere, or a share of the reading. */
export type Guard = { readonly limit: number; readonly risk?: number } & (
  | { readonly u: number }
  | { readonly uRelative: number }
);

/** Which way values get worse: a limit they must not exceed, or one they must not fall short of. */
export type Side = 'upper' | 'lower';

/** A decision limit moved by z standard uncertainties of the reading at that very limit. */
const movedLimit = (guard: Guard, z: number): number => {
  if ('u' in guard) {
    requirePositive('u', guard.u);
    return guard.limit + z * guard.u;
  }
  requirePositive('uRelative', guard.uRelative);
  requirePositive('limit', guard.limit);
  requirePositive('1 less z times uRelative', 1 - z * guard.uRelative);
  return guard.limit / (1 - z * guard.uRelative);
};

const towardsWorse = (side: Side, risk: number): number => {
  requireRisk(risk);
  return (side === 'upper' ? 1 : -1) * normalQuantile(1 - risk);
};

/**
 * The reading up to which (upper limit) or from which (lower limit) a value passes with at most the given risk.
 *
 * Upper limit: T − z u. Source: JCGM 106:2012 guarded acceptance, from memory. Checked: metrology.ts (M5).
 * @throws RangeError on an uncertainty that is not positive or a risk outside 0 to 0.5.
 * @example
 * ```ts
 * acceptanceLimit('upper', { limit: 17.1, u: 2 }) // => 13.810
 * ```
 */
export const acceptanceLimit = (side: Side, guard: Guard): number =>
  movedLimit(guard, -towardsWorse(side, guard.risk ?? usualRisk));

/**
 * The reading beyond which a value fails with at most the given risk.
 *
 * Upper limit: T + z u, and T / (1 − z u_rel) where the uncertainty grows with the reading.
 * Source: JCGM 106:2012 guarded rejection, from memory. Checked: metrology.ts (M4).
 * @throws RangeError on an uncertainty that is not positive or a risk outside 0 to 0.5.
 * @example
 * ```ts
 * rejectionLimit('upper', { limit: 100, uRelative: 0.02, risk: 0.001 }) // => 106.5876
 * ```
 */
export const rejectionLimit = (side: Side, guard: Guard): number =>
  movedLimit(guard, towardsWorse(side, guard.risk ?? usualRisk));
