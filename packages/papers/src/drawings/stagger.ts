/** A label wants to stand at `at`; it is `size` wide. */
export type Wanted = { readonly at: number; readonly size: number };

const gap = 10;

export const clamped = (value: number, from: number, to: number): number =>
  Math.max(from, Math.min(to, value));

/** Row of each label, in the order given: the first row in which it touches no neighbour. */
export const rowsOf = (
  labels: readonly Wanted[],
  width: number,
): readonly { readonly at: number; readonly row: number }[] => {
  const rows: { from: number; to: number }[][] = [];
  return labels.map(({ at, size }) => {
    const middle = clamped(at, size / 2, width - size / 2);
    const from = middle - size / 2 - gap / 2;
    const to = middle + size / 2 + gap / 2;
    const free = rows.findIndex((row) => row.every((other) => other.to <= from || other.from >= to));
    const row = free === -1 ? rows.length : free;
    rows[row] = [...(rows[row] ?? []), { from, to }];
    return { at: middle, row };
  });
};

/** Pushes labels down a column until none touches the one above; order is kept. */
export const spreadDown = (labels: readonly Wanted[]): readonly number[] => {
  let free = Number.NEGATIVE_INFINITY;
  return labels.map(({ at, size }) => {
    const top = Math.max(at - size / 2, free);
    free = top + size + 4;
    return top;
  });
};
