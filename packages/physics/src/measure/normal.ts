import { bracketedRoot } from '../solve/bracketed-root.ts';
import { erfc } from './erf.ts';

/**
 * Share of a normal distribution below z standard deviations.
 *
 * @example
 * ```ts
 * normalCdf(1.645) // => 0.9500150945
 * ```
 */
export const normalCdf = (z: number): number => erfc(-z / Math.SQRT2) / 2;

/** Beyond this many standard deviations a share is no longer told from 0 or 1. */
const farthest = 40;

/**
 * The z below which a share of a normal distribution lies.
 *
 * @throws RangeError unless the share lies between 0 and 1.
 * @example
 * ```ts
 * normalQuantile(0.95) // => 1.644853627
 * ```
 */
export const normalQuantile = (share: number): number => {
  if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`);
  // The lower tail keeps its digits, so the upper one is read from it.
  if (share > 0.5) return -normalQuantile(1 - share);
  return bracketedRoot((z) => normalCdf(z) - share, -farthest, 0);
};
