import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { requireVoidage } from './voidage.ts';

type GradedBed = {
  readonly superficialVelocity: number;
  readonly density: number;
  readonly voidage: number;
  readonly sphericity: number;
  /** Sum over the sizes of drag coefficient × share of mass / diameter, 1/m. */
  readonly dragOverDiameter: number;
};

/**
 * Pressure gradient of a graded settled bed after Rose: the sum over its sizes is given, as textbooks tabulate it.
 *
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * roseGraded({ superficialVelocity: 0.0025, density: 1000, voidage: 0.45, sphericity: 0.82, dragOverDiameter: 75025 }) // => 14879.44
 * ```
 */
export const roseGraded = (bed: GradedBed): number => {
  requireNotNegative('superficialVelocity', bed.superficialVelocity);
  requirePositive('density', bed.density);
  requireVoidage('voidage', bed.voidage);
  requirePositive('sphericity', bed.sphericity);
  requirePositive('dragOverDiameter', bed.dragOverDiameter);
  const velocityHead = bed.density * bed.superficialVelocity ** 2;
  return (1.067 * velocityHead * bed.dragOverDiameter) / (bed.sphericity * bed.voidage ** 4);
};

/**
 * Pressure gradient through a settled bed of one size after Rose.
 *
 * $$ \frac{\Delta P}{L} = \frac{1.067\,\rho v^2 C_D}{\psi\,\varepsilon^4 d} $$
 *
 * No range is stated where it was read. Assumes: a clean settled bed; the drag coefficient belongs to the same velocity.
 * Source: Davis (2010) Table 11-2, seen. Checked: checks/src/published/expansion.ts (X8, the graded form).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * rose.compute({ diameter: 5e-4, dragCoefficient: 25, voidage: 0.45, sphericity: 0.82, superficialVelocity: 0.0025, density: 1000 }).pressureGradient // => 9916.32
 * ```
 */
export const rose = equation(
  {
    key: 'rose',
    title: 'equation.rose',
    words: 'formula.rose',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      dragCoefficient: { symbol: 'C_D', kind: 'ratio' },
      voidage: { symbol: 'ε', kind: 'ratio' },
      sphericity: { symbol: 'ψ', kind: 'ratio' },
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      density: { symbol: 'ρ', kind: 'density' },
    },
    outputs: { pressureGradient: { symbol: 'ΔP/L', kind: 'pressure-gradient' } },
    range: [],
    source: 'davis-2010',
    status: 'seen',
  },
  ({ diameter, dragCoefficient, ...bed }) => {
    requirePositive('diameter', diameter);
    return { pressureGradient: roseGraded({ ...bed, dragOverDiameter: dragCoefficient / diameter }) };
  },
);
