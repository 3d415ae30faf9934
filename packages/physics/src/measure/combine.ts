import { requireNotNegative } from '../meta/assert.ts';

/** A range of which every part is as likely: half its width as a standard uncertainty. */
export const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** Coverage factor for 'about 95 %', as the GUM rounds it. */
export const coverage95 = 2;

/**
 * Combined standard uncertainty of independent parts, each already in the unit of the result: root of the sum of squares.
 *
 * Source: JCGM 100:2008, from memory. Checked: checks/src/published/metrology.ts (M6).
 * @throws RangeError on a negative part.
 * @example
 * ```ts
 * combinedUncertainty([25, 9.7, 2.9, 16.6]) // => 31.6711
 * ```
 */
export const combinedUncertainty = (parts: readonly number[]): number => {
  for (const part of parts) requireNotNegative('part', part);
  return Math.hypot(...parts);
};
