/**
 * Where a continuous function changes sign between two ends, by halving down to neighbouring numbers.
 *
 * Halving is slow (some 60 calls) and cannot fail; every use here is a cheap monotone curve.
 *
 * @throws RangeError when both ends have the same sign (programming mistake).
 * @example
 * ```ts
 * bracketedRoot((x) => x * x - 2, 0, 2) // => 1.414213562373
 * ```
 */
export const bracketedRoot = (curve: (x: number) => number, low: number, high: number): number => {
  const signLow = Math.sign(curve(low));
  const signHigh = Math.sign(curve(high));
  if (signLow === 0) return low;
  if (signHigh === 0) return high;
  if (!(signLow * signHigh < 0)) throw new RangeError(`no change of sign between ${low} and ${high}`);
  let [left, right] = [low, high];
  for (;;) {
    const middle = left + (right - left) / 2;
    if (middle <= left || middle >= right) return middle;
    const sign = Math.sign(curve(middle));
    if (sign === 0) return middle;
    if (sign === signLow) left = middle;
    else right = middle;
  }
};
