/**
 * Odds after evidence: prior times likelihoods, made to sum to 1. Logs are added, so that many answers do not
 * underflow; whoever wants the same last bit for any order hands the evidence over sorted.
 *
 * Checked: bayes.test.ts against decision example D5 (elementary).
 * @throws RangeError when nothing is left possible.
 * @example
 * ```ts
 * posterior([0.3, 0.7], [[0.9, 0.2]])[0] // => 0.6585366
 * ```
 */
export const posterior = (prior: ArrayLike<number>, evidence: readonly ArrayLike<number>[]): Float64Array => {
  const logs = Float64Array.from(prior, Math.log);
  for (const likelihood of evidence) {
    for (let h = 0; h < logs.length; h++) logs[h] = at(logs, h) + Math.log(likelihood[h] ?? 1);
  }
  const highest = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(highest)) throw new RangeError('no-hypothesis-left');
  return normalised(logs.map((log) => Math.exp(log - highest)));
};

export const normalised = (weights: Float64Array): Float64Array => {
  const total = sum(weights);
  return weights.map((weight) => weight / total);
};

export const sum = (values: ArrayLike<number>): number => {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += at(values, i);
  return total;
};

/** Sum of products: the mean of a value over odds. */
export const mean = (odds: ArrayLike<number>, values: ArrayLike<number>): number => {
  let total = 0;
  for (let i = 0; i < odds.length; i++) total += at(odds, i) * at(values, i);
  return total;
};

/** A value within an array's own bounds; the index is ours, so a miss is a zero, not an error. */
export const at = (values: ArrayLike<number>, index: number): number => values[index] ?? 0;
