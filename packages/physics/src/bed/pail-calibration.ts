import { requirePositive } from '../meta/assert.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { type Bed, type BedExpansionMethod, upflowForRise } from './bed-expansion.ts';

/** What came over into the pail in backwash: the bed rose to below, about, or above the free height. */
export type PailSight = 'nothing' | 'fines' | 'beads';

/** Bead sizes that the trade's softening resin may have, m (handbook; our own limits). */
export const beadSizes = { from: 0.45e-3, to: 0.75e-3 } as const;

type Sizes = { readonly from: number; readonly to: number };

export type PailCalibration = {
  readonly method: BedExpansionMethod;
  /** The bead size to go on with. */
  readonly diameter: number;
  /** The sizes within the limits that explain what was seen; absent where none does. */
  readonly explains?: Sizes;
};

type Pail = Omit<Bed, 'diameter'> & {
  readonly method: BedExpansionMethod;
  readonly superficialVelocity: number;
  readonly bedDepth: number;
  readonly freeHeight: number;
  readonly seen: PailSight;
  /** The size assumed so far; kept where it already explains what was seen. */
  readonly assumed: number;
};

/** The one size that rises just to the free height at this rate; endless where it lies beyond the limits. */
const sizeAtFreeHeight = (pail: Pail): number => {
  const surplus = (diameter: number): number =>
    upflowForRise({ ...pail, diameter, rise: pail.freeHeight }) - pail.superficialVelocity;
  if (surplus(beadSizes.from) > 0) return Number.NEGATIVE_INFINITY;
  if (surplus(beadSizes.to) < 0) return Number.POSITIVE_INFINITY;
  return bracketedRoot(surplus, beadSizes.from, beadSizes.to);
};

const sizesThatExplain = (seen: PailSight, critical: number): Sizes => ({
  from: seen === 'beads' ? beadSizes.from : Math.max(critical, beadSizes.from),
  to: seen === 'nothing' ? beadSizes.to : Math.min(critical, beadSizes.to),
});

const clamp = (value: number, { from, to }: Sizes): number => Math.min(to, Math.max(from, value));

/**
 * Which bead size explains what a pail under the drain showed at a measured rate and temperature.
 *
 * Nothing: the bed rose to below the free height. Fines only: about to it. Beads: above it. A smaller bead rises
 * higher, so one size stands exactly at the free height; the assumed size is moved only as far as the sight demands,
 * and never beyond 0.45 to 0.75 mm.
 * Source: our own rule (handbook), the rise by the named method. Checked: pail-calibration.test.ts.
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * calibrateByPail({ method: 'richardson-zaki', seen: 'fines', assumed: 6e-4, superficialVelocity: 0.00349401, bedDepth: 0.8636, freeHeight: 0.4318, particleDensity: 1280, voidage: 0.38, density: 999.702, viscosity: 0.0013059 }).diameter // => 0.0006000
 * ```
 */
export const calibrateByPail = (pail: Pail): PailCalibration => {
  requirePositive('superficialVelocity', pail.superficialVelocity);
  requirePositive('freeHeight', pail.freeHeight);
  requirePositive('assumed', pail.assumed);
  const critical = sizeAtFreeHeight(pail);
  const sizes = sizesThatExplain(pail.seen, critical);
  if (sizes.from > sizes.to) return { method: pail.method, diameter: clamp(critical, beadSizes) };
  return { method: pail.method, diameter: clamp(pail.assumed, sizes), explains: sizes };
};
