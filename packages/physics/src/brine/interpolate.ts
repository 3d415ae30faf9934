/** Where the four neighbours of x begin, or the end four when x lies near or beyond an end. */
const firstOfFour = (places: readonly number[], x: number): number => {
  const below = places.filter((place) => place <= x).length;
  return Math.max(0, Math.min(places.length - 4, below - 2));
};

/** The cubic through the four nearest points; beyond the ends it goes on along the last four. Places must rise. */
export const cubicThroughFour = (places: readonly number[], values: readonly number[], x: number): number => {
  const first = firstOfFour(places, x);
  const near = places.slice(first, first + 4);
  return near.reduce((sum, place, i) => {
    const others = near.filter((_, j) => j !== i);
    const weight = others.reduce((product, other) => (product * (x - other)) / (place - other), 1);
    return sum + weight * (values[first + i] ?? Number.NaN);
  }, 0);
};

/** Straight lines between points; beyond the ends the last line goes on. Places must rise. */
export const straightBetween = (points: readonly (readonly [number, number])[], x: number): number => {
  const after = points.findIndex(([place], i) => i > 0 && x <= place);
  const upper = after === -1 ? points.length - 1 : after;
  const [x0, y0] = points[upper - 1] ?? [Number.NaN, Number.NaN];
  const [x1, y1] = points[upper] ?? [Number.NaN, Number.NaN];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
};
