import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { ergun, reynoldsErgun } from './ergun.ts';
import { standardGravity } from './gravity.ts';
import { requireVoidage } from './voidage.ts';

/**
 * Pressure that a clean settled bed of spheres takes from the water.
 *
 * $$ \Delta P = L\,(\Delta P/L)_{Ergun} $$
 *
 * Valid 1 < Re < 2300 with Re = ρ v d / (μ (1 − ε)). Assumes: as `ergun`; nothing for screens and gravel.
 * Source: Ergun (1952), second hand. Checked: checks/src/published/expansion.ts (X9, X10).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * bedPressureLoss.compute({ diameter: 6e-4, voidage: 0.38, superficialVelocity: 0.0068, density: 998.207, viscosity: 0.0010016, bedDepth: 0.9 }).pressureLoss // => 19261.35
 * ```
 */
export const bedPressureLoss = equation(
  {
    key: 'bed-pressure-loss',
    title: 'equation.bed-pressure-loss',
    words: 'formula.bed-pressure-loss',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      voidage: { symbol: 'ε', kind: 'ratio' },
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
      bedDepth: { symbol: 'L', kind: 'length' },
    },
    outputs: { pressureLoss: { symbol: 'ΔP', kind: 'pressure' } },
    range: [{ of: 'symbol.reynolds-ergun', kind: 'ratio', min: 1, max: 2300, value: reynoldsErgun }],
    source: 'ergun-1952',
    status: 'second-hand',
  },
  (bed) => {
    requireNotNegative('bedDepth', bed.bedDepth);
    return { pressureLoss: ergun.compute(bed).pressureGradient * bed.bedDepth };
  },
);

/**
 * Pressure that a lifted bed takes from the upflow: its weight in water, whatever the rate.
 *
 * $$ \Delta P = (1-\varepsilon)(\rho_p-\rho) g L $$
 *
 * Assumes: the whole bed lifted, nothing for the wall. Source: balance of forces, by definition of lifting.
 * Checked: where Ergun's loss at `upflowErgun` of no expansion equals it (property test).
 * @throws RangeError on a non-finite or non-positive argument, or grains lighter than the water.
 * @example
 * ```ts
 * liftedBedLoss.compute({ voidage: 0.38, particleDensity: 1280, density: 999.702, bedDepth: 0.9 }).pressureLoss // => 1533.8
 * ```
 */
export const liftedBedLoss = equation(
  {
    key: 'lifted-bed-loss',
    title: 'equation.lifted-bed-loss',
    words: 'formula.lifted-bed-loss',
    inputs: {
      voidage: { symbol: 'ε', kind: 'ratio' },
      particleDensity: { symbol: 'ρ_p', kind: 'density' },
      density: { symbol: 'ρ', kind: 'density' },
      bedDepth: { symbol: 'L', kind: 'length' },
    },
    outputs: { pressureLoss: { symbol: 'ΔP', kind: 'pressure' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ voidage, particleDensity, density, bedDepth }) => {
    requireVoidage('voidage', voidage);
    requirePositive('density', density);
    requirePositive('particleDensity less density', particleDensity - density);
    requireNotNegative('bedDepth', bedDepth);
    return { pressureLoss: (1 - voidage) * (particleDensity - density) * standardGravity * bedDepth };
  },
);
