/** Long work is a generator: pure, no clock, no promise. Whoever drives it shows progress and stops by not asking again. */
export type Progress = { readonly done: number; readonly of: number };
export type Work<T> = Generator<Progress, T, void>;

export const finish = <T>(work: Generator<unknown, T, void>): T => {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
  }
};

/** How much to compute: 'quick' while a finger moves, 'full' once it rests. Limits are counts, never seconds. */
export type Effort = 'quick' | 'full';
