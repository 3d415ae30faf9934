import type { Draft } from '@brinewright/journal';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';

/** A fault to be mended whatever the odds, or what the valve is to become. */
export const decided = (place: Place, what: 'fault' | 'convert', value: string): readonly Draft[] => [
  aboutVisit(place, 'decision-made', { what, value }),
];

/** So many of a part went in; the last word counts. */
export const partUsed = (place: Place, part: string, count: number): readonly Draft[] => [
  aboutVisit(place, 'part-used', { part, count }),
];

type Line = { readonly part: string; readonly count: number };

/** What lies in the van, written whole: parts nobody counted are left out. */
export const stockListed = (
  place: Place,
  lines: readonly { readonly part: string; readonly count?: number | undefined }[],
): readonly Draft[] => [
  aboutVisit(place, 'stock-listed', {
    lines: lines.flatMap(({ part, count }): readonly Line[] =>
      count === undefined ? [] : [{ part, count }],
    ),
  }),
];

/** Taken up, held against the valve; or laid down again. */
export const inHandChanged = (place: Place, kit: readonly string[], part: string): readonly Draft[] => [
  aboutVisit(place, 'gate-checked', {
    kit: kit.includes(part) ? kit.filter((one) => one !== part) : [...kit, part],
  }),
];
