/** Largest first; equal to 1e-9 counts as a tie and the id decides, so that every engine ranks alike. */
export const byThenId =
  <T>(value: (item: T) => number, id: (item: T) => string) =>
  (a: T, b: T): number => {
    const x = value(a);
    const y = value(b);
    const tie = Math.abs(x - y) <= 1e-9 * Math.max(Math.abs(x), Math.abs(y));
    if (!tie) return y - x;
    return id(a) < id(b) ? -1 : id(a) > id(b) ? 1 : 0;
  };
