/** A straight scale: values to px. */
export type Scale = (value: number) => number;

export const linear = (from: number, to: number, start: number, end: number): Scale => {
  const span = to - from || 1;
  return (value) => start + ((value - from) / span) * (end - start);
};

/** Room round a set of values, so that nothing stands at the very edge. */
export const around = (values: readonly number[], share: number): readonly [number, number] => {
  const from = Math.min(...values);
  const to = Math.max(...values);
  const room = (to - from || Math.abs(to) || 1) * share;
  return [from - room, to + room];
};
