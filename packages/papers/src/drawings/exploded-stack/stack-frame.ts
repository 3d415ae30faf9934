import type { Point } from '../../markup/path.ts';
import type { ExplodedStack, Placed } from './stack-model.ts';

/** Where things stand on the sheet: the bench at the left, the bore at the right, one axis through both. */
export type StackFrame = {
  readonly width: number;
  readonly height: number;
  readonly radius: { readonly along: number; readonly across: number };
  /** A point of the axis, by its distance along it in px. */
  readonly axis: (along: number) => Point;
  /** Where a piece stands on the bench, and where in the bore. */
  readonly onBench: (piece: Placed, index: number) => Span;
  /** The next piece stands a little off the others. */
  readonly apart: (piece: Placed, index: number) => Span;
  readonly inBore: (piece: Placed) => Span;
  readonly bore: Span;
  readonly top: number;
};

export type Span = { readonly from: number; readonly to: number };

/** The axis rises to the far end by this much of its length. */
const rise = 0.15;
const margin = 14;
const gap = 2.5;
/** Between the bench and the mouth of the bore. */
const between = 30;

export const stackFrame = (stack: ExplodedStack, placed: readonly Placed[], width: number): StackFrame => {
  const length = placed.at(-1)?.to ?? 0;
  const gaps = gap * Math.max(0, placed.length - 1);
  const radius = Math.min(74, Math.max(40, width * 0.125));
  const room = width - 2 * margin - between - gaps - 0.5 * radius - 10;
  const scale = room / (2 * Math.max(length, 0.02));
  const mouth = margin + 0.25 * radius + length * scale + gaps + between;
  const top = 64 + (stack.schematic ? 40 : 0);
  const low = top + rise * width + radius;
  const bench = ({ from, to }: Placed, index: number, off: number): Span => {
    const start = margin + 0.25 * radius + index * gap + off;
    return { from: start + from * scale, to: start + to * scale };
  };
  return {
    width,
    height: low + radius + 52,
    radius: { along: radius * 0.25, across: radius },
    axis: (along) => [along, low - rise * along],
    onBench: (piece, index) => bench(piece, index, 0),
    apart: (piece, index) => bench(piece, index, between * 0.45),
    inBore: ({ from, to }) => ({ from: mouth + 4 + from * scale, to: mouth + 4 + to * scale }),
    bore: { from: mouth, to: mouth + length * scale + 10 },
    top,
  };
};

/** A slice of the section through the axis: from `low` to `high` across it, sheared with the axis. */
export const slice = (
  { axis }: StackFrame,
  { from, to }: Span,
  [low, high]: readonly [number, number],
): readonly Point[] => {
  const [x1, y1] = axis(from);
  const [x2, y2] = axis(to);
  return [
    [x1, y1 + low],
    [x2, y2 + low],
    [x2, y2 + high],
    [x1, y1 + high],
  ];
};
