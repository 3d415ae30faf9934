/*
 * A fixed loop of the kind of work assessing is: floating point over small arrays, with a branch and a function of
 * exp and log. Its time on this machine, in this run, is what everything else is told in, so that a slower machine
 * or a busy one moves both.
 */
const rounds = 400;
const size = 256;

/** Seeded, so that every run multiplies the same numbers (Mulberry32). */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

export const yardstickInput = (): Float64Array => {
  const next = seeded(20261125);
  return Float64Array.from({ length: size }, () => 0.1 + next());
};

/** The result is used by the caller, so that nothing is optimised away. */
export const yardstick = (input: Float64Array): number => {
  let total = 0;
  for (let round = 0; round < rounds; round += 1) {
    for (const value of input) {
      const mixed = Math.exp(-value) + Math.log1p(value * round);
      total += mixed > 1 ? mixed : value * mixed;
    }
  }
  return total;
};
