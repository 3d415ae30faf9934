import type { Counts } from '../commands/done.ts';

type Asked = { readonly is: string; readonly one: string; readonly name: string; readonly of: number };

export type Difference = Omit<Asked, 'of'> & { readonly missing: number };

/** What does not add up yet, kind by kind; too many is less than none missing. */
export const differences = (counts: Counts, asked: readonly Asked[]): readonly Difference[] =>
  asked
    .map(({ of, ...piece }) => ({ ...piece, missing: of - (counts[piece.is] ?? 0) }))
    .filter(({ missing }) => missing !== 0);

/** How many pieces of the ordered list have moved: as far as the counts reach without a piece passed over. */
export const movedOf = (order: readonly string[], counts: Counts): number => {
  const left = new Map(Object.entries(counts));
  const stop = order.findIndex((is) => {
    const count = left.get(is) ?? 0;
    left.set(is, count - 1);
    return count <= 0;
  });
  return stop < 0 ? order.length : stop;
};

/** One more or one fewer, never below none. */
export const counted = (counts: Counts, is: string, by: 1 | -1): Counts => ({
  ...counts,
  [is]: Math.max(0, (counts[is] ?? 0) + by),
});

/** What stands beside the step: the draft, else what was recorded with it. */
export const countsNow = (
  draft: Counts,
  asked: readonly (Asked & { readonly counted?: number })[],
): Counts => {
  if (Object.keys(draft).length > 0) return draft;
  return Object.fromEntries(
    asked.flatMap(({ is, counted: count }) => (count === undefined ? [] : [[is, count]])),
  );
};
