import { rounded } from './element.ts';

export type Point = readonly [number, number];

const at = ([x, y]: Point): string => `${rounded(x)} ${rounded(y)}`;

export const polyline = (points: readonly Point[]): string =>
  points.map((point, index) => `${index === 0 ? 'M' : 'L'}${at(point)}`).join('');

export const polygon = (points: readonly Point[]): string => `${polyline(points)}Z`;

const towards = (from: Point, to: Point, distance: number): Point => {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return from;
  const share = Math.min(0.5, distance / length);
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
};

/** A line through the points whose corners are rounded. */
export const bent = (points: readonly Point[], radius: number): string =>
  points
    .map((point, index) => {
      const before = points[index - 1];
      const after = points[index + 1];
      if (before === undefined) return `M${at(point)}`;
      if (after === undefined) return `L${at(point)}`;
      return `L${at(towards(point, before, radius))}Q${at(point)} ${at(towards(point, after, radius))}`;
    })
    .join('');
