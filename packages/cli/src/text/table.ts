import { columns as fullWidth, plainSpaces, widthOf, wrap } from './wrap.ts';

export type Column = {
  readonly title: string;
  readonly align?: 'left' | 'right';
  /** Wraps first where the table is too wide. */
  readonly gives?: true;
};
export type Row = { readonly cells: readonly string[]; readonly under?: readonly string[] };

const gap = 2;
const least = 14;

/** Columns as wide as their content; where that is too wide, some wrap. Lines under a row are indented. */
export const table = (titles: readonly Column[], rows: readonly Row[], width = fullWidth): string[] => {
  const head: Row[] = titles.every(({ title }) => title === '')
    ? []
    : [{ cells: titles.map(({ title }) => title) }];
  const all = [...head, ...rows];
  const widths = fitted(
    titles,
    titles.map((_, column) => Math.max(...all.map(({ cells }) => widthOf(cells[column] ?? '')))),
    width,
  );
  return all.flatMap(({ cells, under = [] }) => [
    ...rowLines(titles, cells, widths),
    ...under.flatMap((line) => wrap(line, { width, first: '    ' })),
  ]);
};

/** Takes from the widest of the columns that give, then from the widest of all, until the table fits. */
const fitted = (titles: readonly Column[], natural: readonly number[], width: number): readonly number[] => {
  const room = width - gap * (natural.length - 1);
  const giving = narrowed(natural, room, (column) => titles[column]?.gives === true);
  return narrowed(giving, room, () => true);
};

const narrowed = (
  from: readonly number[],
  room: number,
  mayGive: (column: number) => boolean,
): readonly number[] => {
  const widths = [...from];
  for (let total = sum(widths); total > room; total -= 1) {
    const widest = Math.max(...widths.filter((_, column) => mayGive(column)));
    if (widest <= least) break;
    widths[widths.findIndex((one, column) => one === widest && mayGive(column))] = widest - 1;
  }
  return widths;
};

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

const rowLines = (
  titles: readonly Column[],
  cells: readonly string[],
  widths: readonly number[],
): readonly string[] => {
  const wrapped = titles.map((_, column) => wrap(cells[column] ?? '', { width: widths[column] ?? least }));
  const height = Math.max(...wrapped.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    plainSpaces(
      titles
        .map(({ align }, column) => padded(wrapped[column]?.[line] ?? '', widths[column] ?? least, align))
        .join(' '.repeat(gap)),
    ),
  );
};

const padded = (text: string, width: number, align: Column['align'] = 'left'): string => {
  const fill = ' '.repeat(Math.max(0, width - widthOf(text)));
  return align === 'right' ? `${fill}${text}` : `${text}${fill}`;
};
