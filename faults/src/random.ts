/** Numbers that look random and are the same for the same seed. */
export type Random = {
  /** From 0 up to, not including, 1. */
  readonly next: () => number;
  /** A whole number from `least` to `most`, both included. */
  readonly between: (least: number, most: number) => number;
  readonly pick: <T>(items: readonly [T, ...T[]]) => T;
};

/** Mulberry32 (Tommy Ettinger, public domain): 32 bits of state, good enough to choose moments. */
export const randomFrom = (seed: number): Random => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { next, between, pick: (items) => items[between(0, items.length - 1)] ?? items[0] };
};
