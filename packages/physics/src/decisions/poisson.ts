import { requireNotNegative, requirePositive } from '../meta/assert.ts';

const requireCount = (count: number): void => {
  requireNotNegative('count', count);
  if (!Number.isInteger(count)) throw new RangeError(`count must be whole, got ${count}`);
};

/** Beyond this mean the first term has no digits left and the sum would start from nothing. */
const largestMean = 700;

const requireMean = (mean: number): void => {
  requirePositive('mean', mean);
  if (mean > largestMean) throw new RangeError(`mean must not exceed ${largestMean}, got ${mean}`);
};

/** Terms of the Poisson distribution from 0 up, each from the one before. */
function* poissonTerms(mean: number): Generator<{ readonly count: number; readonly term: number }, never> {
  let term = Math.exp(-mean);
  for (let count = 0; ; count++) {
    yield { count, term };
    term *= mean / (count + 1);
  }
}

/**
 * Probability that at most a number of things are wanted, when on average `mean` are.
 *
 * @throws RangeError on a mean that is not positive or above 700, or a count that is not whole.
 * @example
 * ```ts
 * poissonCdf(4, 4) // => 0.628837
 * ```
 */
export const poissonCdf = (mean: number, most: number): number => {
  requireMean(mean);
  requireCount(most);
  let sum = 0;
  for (const { count, term } of poissonTerms(mean)) {
    if (count > most) break;
    sum += term;
  }
  return Math.min(1, sum);
};

/**
 * The smallest whole number not exceeded with a probability at least.
 *
 * @throws RangeError on a mean that is not positive or above 700, or a share outside 0 to 1.
 * @example
 * ```ts
 * poissonQuantile(4, 0.75) // => 5
 * ```
 */
export const poissonQuantile = (mean: number, share: number): number => {
  requireMean(mean);
  if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`);
  let sum = 0;
  for (const { count, term } of poissonTerms(mean)) {
    sum += term;
    // Far out the sum stops growing a hair short of 1; this is then the number.
    if (sum >= share || (count > mean && sum + term === sum)) return count;
  }
  return 0;
};

/**
 * How many are wanted beyond a stock, on average: the sum of (k − S) p(k) over k > S.
 *
 * @throws RangeError on a mean that is not positive or above 700, or a stock that is not whole.
 * @example
 * ```ts
 * poissonShortfall(2, 4) // => 0.07514
 * ```
 */
export const poissonShortfall = (mean: number, stock: number): number => {
  requireMean(mean);
  requireCount(stock);
  let sum = 0;
  for (const { count, term } of poissonTerms(mean)) {
    const part = Math.max(0, count - stock) * term;
    sum += part;
    if (count > stock && count > mean && part <= sum * Number.EPSILON) return sum;
  }
  return sum;
};
