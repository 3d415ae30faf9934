/** Times of one subject in milliseconds. */
export type Times = {
  readonly min: number;
  readonly mean: number;
  /** Standard deviation of the single runs. */
  readonly spread: number;
  readonly runs: number;
};

export type Effort = { readonly warmUp: number; readonly runs: number };

/** Runs a piece of work, warm first, and sums its results so that each run has to be done. */
export const measure = (work: () => number, { warmUp, runs }: Effort): { times: Times; used: number } => {
  let used = 0;
  for (let run = 0; run < warmUp; run += 1) used += work();
  const taken = Array.from({ length: runs }, () => {
    const start = performance.now();
    used += work();
    return performance.now() - start;
  });
  return { times: timesOf(taken), used };
};

const timesOf = (taken: readonly number[]): Times => {
  const mean = taken.reduce((sum, one) => sum + one, 0) / taken.length;
  const variance = taken.reduce((sum, one) => sum + (one - mean) ** 2, 0) / Math.max(1, taken.length - 1);
  return { min: Math.min(...taken), mean, spread: Math.sqrt(variance), runs: taken.length };
};
