import { requirePositive } from '../meta/assert.ts';
import { bracketedRoot } from '../solve/bracketed-root.ts';
import { type Bed, type BedExpansionMethod, upflowForRise } from './bed-expansion.ts';

/** What came over into the pail in backwash: the bed rose to below, about, or above the free height. */
export type PailSight = 'nothing' | 'fines' | 'beads';

/** Bead sizes that the trade's softening resin may have, m (handbook; our own limits). */
export const beadSizes = { from: 0.45e-3, to: 0.75e-3 } as const;

export type PailCalibration = {
  readonly method: BedExpansionMethod;
  /** The bead size to go on with. */
  readonly diameter: number;
  /** The sizes that explain what was seen, within the limits. Empty (from > to) when none does. */
  readonly from: number;
  readonly to: number;
  /** Whether some size within the limits explains what was seen. */
  readonly explained: boolean;
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

/** The size that rises just to the free height at this rate, or the limit beyond which it lies. */
const sizeAtFreeHeight = (pail: Pail): number => {
  const surplus = (diameter: number): number =>
    upflowForRise({ ...pail, diameter, rise: pail.freeHeight }) - pail.superficialVelocity;
  if (surplus(beadSizes.from) >= 0) return beadSizes.from * (surplus(beadSizes.from) > 0 ? 0 : 1);
  if (surplus(beadSizes.to) <= 0) return surplus(beadSizes.to) < 0 ? Number.POSITIVE_INFINITY : beadSizes.to;
  return bracketedRoot(surplus, beadSizes.from, beadSizes.to);
};

const sizesThatExplain = (seen: PailSight, critical: number): { readonly from: number; readonly to: number } => {
  if (seen === 'nothing') return { from: Math.max(critical, beadSizes.from), to: beadSizes.to };
  if (seen === 'beads') return { from: beadSizes.from, to: Math.min(critical, beadSizes.to) };
  return { from: Math.max(critical, beadSizes.from), to: Math.min(critical, beadSizes.to) };
};

const clamp = (value: number, from: number, to: number): number => Math.min(to, Math.max(from, value));

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
 * calibrateByPail({ method: 'richardson-zaki', seen: 'fines', assumed: 6e-4, superficialVelocity: 0.0034767, bedDepth: 0.8636, freeHeight: 0.4318, particleDensity: 1280, voidage: 0.38, density: 999.702, viscosity: 0.0013059 }).diameter // => 0.0006000
 * ```
 */
export const calibrateByPail = (pail: Pail): PailCalibration => {
  requirePositive('superficialVelocity', pail.superficialVelocity);
  requirePositive('freeHeight', pail.freeHeight);
  requirePositive('assumed', pail.assumed);
  const critical = sizeAtFreeHeight(pail);
  const { from, to } = sizesThatExplain(pail.seen, critical);
  const explained = from <= to;
  const wanted = explained ? clamp(pail.assumed, from, to) : critical;
  return { method: pail.method, diameter: clamp(wanted, beadSizes.from, beadSizes.to), from, to, explained };
};
