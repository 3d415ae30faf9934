const twoOverRootPi = 2 / Math.sqrt(Math.PI);

/** Where the series hands over to the fraction: both are good to the last digits here. */
const handOver = 2.25;

/** e^(−x²) Σ 2ⁿ x^(2n+1) / (1·3·…·(2n+1)): every term positive, nothing cancels. */
const series = (x: number): number => {
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * 1e-18; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return twoOverRootPi * Math.exp(-x * x) * sum;
};

/** Terms of the fraction; at the hand-over 60 give every digit, farther out fewer would do. */
const depth = 90;

/** e^(−x²)/√π · 1/(x + ½/(x + 1/(x + 3/2/(x + …)))), from the inside out. */
const fraction = (x: number): number => {
  let tail = x;
  for (let k = depth; k >= 1; k--) tail = x + k / 2 / tail;
  return Math.exp(-x * x) / (Math.sqrt(Math.PI) * tail);
};

/**
 * Error function, to about 2e-16.
 *
 * A series of positive terms below 2.25, the complement's continued fraction above.
 * Source: Abramowitz and Stegun (1964) 7.1.6 and 7.1.14, from memory. Checked: normal.test.ts against mpmath.
 * @example
 * ```ts
 * erf(0.5) // => 0.52049987781305
 * ```
 */
export const erf = (x: number): number => {
  if (x < 0) return -erf(-x);
  return x < handOver ? series(x) : 1 - fraction(x);
};

/**
 * Complement of the error function; small values keep their digits.
 *
 * @example
 * ```ts
 * erfc(4) // => 1.541725790028e-8
 * ```
 */
export const erfc = (x: number): number => (x < handOver ? 1 - erf(x) : fraction(x));
