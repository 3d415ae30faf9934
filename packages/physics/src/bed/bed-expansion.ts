import { requirePositive } from '../meta/assert.ts';
import { spheres } from './ergun.ts';
import { expansionErgun, upflowErgun } from './expansion-ergun.ts';
import { expansionRichardsonZaki, upflowRichardsonZaki } from './richardson-zaki.ts';

/** The published ways to predict how far a bed rises; the first is the one we go by, the other shows the spread. */
export const bedExpansionMethods = ['richardson-zaki', 'ergun'] as const;

export type BedExpansionMethod = (typeof bedExpansionMethods)[number];

/** A bed of one size in water. Constants of Ergun only where the grains are not spheres. */
export type Bed = {
  readonly diameter: number;
  readonly particleDensity: number;
  readonly voidage: number;
  readonly density: number;
  readonly viscosity: number;
  readonly viscousConstant?: number;
  readonly inertialConstant?: number;
};

/** What the bed does at an upflow: lies, stands lifted, or leaves with the water. */
export type BedExpansion =
  | {
      readonly state: 'settled' | 'lifted';
      readonly method: BedExpansionMethod;
      readonly expandedVoidage: number;
      readonly expansion: number;
    }
  | { readonly state: 'carried-off'; readonly method: BedExpansionMethod };

/**
 * How far an upflow lifts a bed, by a named method.
 *
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * bedExpansion({ method: 'ergun', diameter: 6e-4, particleDensity: 1280, voidage: 0.38, superficialVelocity: 1e-4, density: 999.702, viscosity: 0.0013059 }).state // => 'settled'
 * ```
 */
export const bedExpansion = (
  bed: Bed & { readonly method: BedExpansionMethod; readonly superficialVelocity: number },
): BedExpansion => {
  const { method } = bed;
  const { expandedVoidage, expansion } =
    method === 'ergun'
      ? expansionErgun.compute({ ...spheres, ...bed })
      : expansionRichardsonZaki.compute(bed);
  if (expandedVoidage >= 1) return { state: 'carried-off', method };
  return { state: expandedVoidage > bed.voidage ? 'lifted' : 'settled', method, expandedVoidage, expansion };
};

/**
 * The upflow that lifts the top of a bed by a height, by a named method: for the free height less a margin, the most a
 * backwash may flow.
 *
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * upflowForRise({ method: 'richardson-zaki', bedDepth: 0.8636, rise: 0.4318, diameter: 6e-4, particleDensity: 1280, voidage: 0.38, density: 999.702, viscosity: 0.0013059 }) // => 0.00349401
 * ```
 */
export const upflowForRise = (
  bed: Bed & { readonly method: BedExpansionMethod; readonly bedDepth: number; readonly rise: number },
): number => {
  requirePositive('bedDepth', bed.bedDepth);
  const expansion = bed.rise / bed.bedDepth;
  return bed.method === 'ergun'
    ? upflowErgun.compute({ ...spheres, ...bed, expansion }).superficialVelocity
    : upflowRichardsonZaki.compute({ ...bed, expansion }).superficialVelocity;
};
