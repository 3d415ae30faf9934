import type { QuantityRange } from '@brinewright/equipment';

/** The two times that a controller can hold next to an exact one; the ends of its range bound both. */
export type Neighbours = {
  readonly below: number;
  readonly above: number;
  /** The exact time is longer than the longest, or shorter than the shortest, that can be held. */
  readonly beyond: boolean;
  readonly short: boolean;
};

const tiny = 1e-9;

export const neighboursOf = (exact: number, times: QuantityRange): Neighbours => {
  const by = times.by?.si ?? 60;
  const min = times.min.si;
  const last = min + Math.floor((times.max.si - min) / by + tiny) * by;
  const places = Math.floor((exact - min) / by + tiny);
  const below = Math.min(last, Math.max(min, min + places * by));
  const above = Math.min(last, below + by);
  return {
    below,
    above: exact <= min ? min : above,
    beyond: exact > last + tiny * last,
    short: exact < min - tiny * min,
  };
};

/** Nearest of the two; of two equally near the longer, which rinses more. */
export const nearest = (exact: number, { below, above }: Neighbours): number =>
  exact - below < above - exact - tiny ? below : above;

/** Never shorter than the exact time, but where that is already held. */
export const upward = (exact: number, { below, above }: Neighbours): number =>
  below >= exact * (1 - tiny) ? below : above;

/** Downward to a whole number of steps from where the range begins, for volumes. */
export const downTo = (exact: number, step: number, from = 0): number =>
  from + Math.floor((exact - from) / step + tiny) * step;
