import type { Point } from '../../markup/path.ts';
import { type BoreDrawing, type Chamber, dryPort, middleOf } from './bore-drawing.ts';

/** Distances from the axis in px. */
export type Radii = {
  readonly rod: number;
  readonly groove: number;
  readonly land: number;
  readonly wall: number;
  readonly gallery: readonly [number, number];
  readonly outer: number;
  readonly neck: number;
};

/** The section in px: `u` runs along the bore, `v` across it, below nought on the side of the pipes. */
export type Frame = {
  readonly lying: boolean;
  readonly radii: Radii;
  readonly along: (metres: number) => number;
  readonly place: (u: number, v: number) => Point;
  /** From the back plate to the end cap. */
  readonly from: number;
  readonly to: number;
  readonly rodEnd: number;
  readonly capEnd: number;
  readonly scale: number;
};

const lyingRadii: Radii = {
  rod: 11,
  groove: 25,
  land: 46,
  wall: 70,
  gallery: [80, 102],
  outer: 112,
  neck: 142,
};
const standingRadii: Radii = {
  rod: 7,
  groove: 13,
  land: 25,
  wall: 40,
  gallery: [45, 57],
  outer: 63,
  neck: 78,
};

/** The drive end and the cap beyond the chambers, m. */
const before = 0.026;
const after = 0.018;

/** Balloons of neighbouring seals must not touch. */
const leastBetweenSeals = 25;

const spanOf = (bore: BoreDrawing): { from: number; to: number } => ({
  from: Math.min(...bore.chambers.map((chamber) => chamber.from)),
  to: Math.max(...bore.chambers.map((chamber) => chamber.to)),
});

const closest = (bore: BoreDrawing): number =>
  Math.min(
    ...bore.seals
      .slice(1)
      .map((seal, index) => seal.at - (bore.seals[index]?.at ?? Number.NEGATIVE_INFINITY)),
  );

export const framed = (bore: BoreDrawing, width: number, top: number): Frame => {
  const lying = width >= 600;
  const span = spanOf(bore);
  const fitting = (width - 8) / (span.to - span.from + before + after);
  const scale = lying ? fitting : Math.max(1500, leastBetweenSeals / closest(bore));
  const start = span.from - before;
  const along = (metres: number): number => (metres - start) * scale;
  const radii = lying ? lyingRadii : standingRadii;
  const axis = lying ? top + radii.neck : width * 0.452;
  return {
    lying,
    radii,
    along,
    place: (u, v) => (lying ? [u + 4, axis + v] : [axis + v, u + top]),
    from: along(span.from),
    to: along(span.to),
    rodEnd: 0,
    capEnd: along(span.to + after),
    scale,
  };
};

/** Drain, inlet and outlet leave towards the pipes, tank top and riser towards the tank. */
export const sideOf = (port: string): -1 | 1 => (port === 'TOP' || port === 'BOT' ? 1 : -1);

const balloonRoom = 14;

/** Half the width of a neck: as wide as its chamber allows without touching an item number. */
export const halfNeck = (frame: Frame, chamber: Chamber): number => {
  const half = ((chamber.to - chamber.from) * frame.scale) / 2;
  const most = frame.lying ? 26 : 16;
  return Math.max(5, Math.min(most, half - balloonRoom - 5));
};

export const middle = (frame: Frame, chamber: Chamber): number => frame.along(middleOf(chamber));

export const isWet = (chamber: Chamber): boolean => chamber.port !== dryPort;

/** A box from corner to corner in the section. */
export const box = (
  frame: Frame,
  u: readonly [number, number],
  v: readonly [number, number],
): readonly Point[] => [
  frame.place(u[0], v[0]),
  frame.place(u[1], v[0]),
  frame.place(u[1], v[1]),
  frame.place(u[0], v[1]),
];
