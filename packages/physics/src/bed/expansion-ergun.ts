import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { reynoldsErgun } from './ergun.ts';
import { standardGravity } from './gravity.ts';
import { expansionOf, requireVoidage, voidageAt } from './voidage.ts';

type Grains = {
  readonly diameter: number;
  readonly particleDensity: number;
  readonly density: number;
  readonly viscosity: number;
  readonly viscousConstant: number;
  readonly inertialConstant: number;
};

/** 3Y per velocity and (2X − 3Y) per velocity squared in ε³ + 3Y ε − 2X = 0. */
const cubicTerms = (grains: Grains): { readonly viscous: number; readonly inertial: number } => {
  const weight = standardGravity * (grains.particleDensity - grains.density) * grains.diameter;
  requirePositive('particleDensity less density', grains.particleDensity - grains.density);
  requirePositive('diameter', grains.diameter);
  requirePositive('density', grains.density);
  requirePositive('viscosity', grains.viscosity);
  requirePositive('viscousConstant', grains.viscousConstant);
  requireNotNegative('inertialConstant', grains.inertialConstant);
  return {
    viscous: (grains.viscousConstant * grains.viscosity) / (weight * grains.diameter),
    inertial: (grains.inertialConstant * grains.density) / weight,
  };
};

/** The one real root of ε³ + 3Y ε − 2X = 0, by Cardano, with one Newton step against cancellation. */
const cardano = (threeY: number, twoX: number): number => {
  const x = twoX / 2;
  const y = threeY / 3;
  const lead = Math.cbrt(x + Math.sqrt(x * x + y ** 3));
  if (lead === 0) return 0;
  const root = lead - y / lead;
  return root - (root ** 3 + threeY * root - twoX) / (3 * root * root + threeY);
};

/**
 * How far an upflow lifts a bed, keeping Ergun's equation after the grains have parted.
 *
 * $$ \varepsilon^3 + 3Y\varepsilon - 2X = 0,\quad 3Y = \frac{k_V\mu v}{g\Delta\rho d^2},\quad
 *    2X = 3Y + \frac{k_I\rho v^2}{g\Delta\rho d} $$
 *
 * Below the velocity that lifts, the voidage stays the settled one. Where the root reaches 1 the grains are carried
 * off: the voidage is 1 and the expansion infinite (`bedExpansion` says so in words).
 * Valid: the Reynolds number of Ergun at the expanded voidage, 1 to 2300. Assumes: one size, no wall effect.
 * Source: Akgiray and Saatçı (2001), abstract seen. Checked: checks/src/published/expansion.ts (X1, X3, X4).
 * Error: about 20 points of expansion against Richardson and Zaki for the same bead; no closer claim without calibration.
 * @throws RangeError on a non-finite or non-positive argument, or grains lighter than the water.
 * @example
 * ```ts
 * expansionErgun.compute({ diameter: 6e-4, particleDensity: 1280, voidage: 0.38, superficialVelocity: 0.00339549, density: 999.702, viscosity: 0.0013059, viscousConstant: 150, inertialConstant: 1.75 }).expansion // => 0.7024
 * ```
 */
export const expansionErgun = equation(
  {
    key: 'expansion-ergun',
    title: 'equation.expansion-ergun',
    words: 'formula.expansion-ergun',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      particleDensity: { symbol: 'ρ_p', kind: 'density' },
      voidage: { symbol: 'ε₀', kind: 'ratio' },
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
      viscousConstant: { symbol: 'k_V', kind: 'ratio' },
      inertialConstant: { symbol: 'k_I', kind: 'ratio' },
    },
    outputs: {
      expandedVoidage: { symbol: 'ε', kind: 'ratio' },
      expansion: { symbol: 'E', kind: 'share' },
    },
    range: [
      {
        of: 'symbol.reynolds-ergun',
        kind: 'ratio',
        min: 1,
        max: 2300,
        value: (bed, { expandedVoidage }) => reynoldsErgun({ ...bed, voidage: expandedVoidage }),
      },
    ],
    source: 'akgiray-saatci-2001',
    status: 'second-hand',
  },
  (bed) => {
    requireVoidage('voidage', bed.voidage);
    requireNotNegative('superficialVelocity', bed.superficialVelocity);
    const { viscous, inertial } = cubicTerms(bed);
    const threeY = viscous * bed.superficialVelocity;
    const root = cardano(threeY, threeY + inertial * bed.superficialVelocity ** 2);
    const expandedVoidage = Math.min(1, Math.max(bed.voidage, root));
    return { expandedVoidage, expansion: expansionOf(bed.voidage, expandedVoidage) };
  },
);

/**
 * The upflow that lifts a bed by a wanted share, by Ergun's equation after fluidisation (the same cubic, read the other way).
 *
 * $$ b v^2 + a(1-\varepsilon) v - \varepsilon^3 = 0,\quad a = \frac{k_V\mu}{g\Delta\rho d^2},\quad b = \frac{k_I\rho}{g\Delta\rho d} $$
 *
 * Valid: Ergun's Reynolds number at the expanded voidage, 1 to 2300. Assumes: as `expansionErgun`.
 * Source: Akgiray and Saatçı (2001), abstract seen. Checked: round trip with `expansionErgun`.
 * @throws RangeError on a non-finite or non-positive argument, or grains lighter than the water.
 * @example
 * ```ts
 * upflowErgun.compute({ diameter: 6e-4, particleDensity: 1280, voidage: 0.38, expansion: 0.7024, density: 999.702, viscosity: 0.0013059, viscousConstant: 150, inertialConstant: 1.75 }).superficialVelocity // => 0.003396
 * ```
 */
export const upflowErgun = equation(
  {
    key: 'upflow-ergun',
    title: 'equation.upflow-ergun',
    words: 'formula.upflow-ergun',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      particleDensity: { symbol: 'ρ_p', kind: 'density' },
      voidage: { symbol: 'ε₀', kind: 'ratio' },
      expansion: { symbol: 'E', kind: 'share' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
      viscousConstant: { symbol: 'k_V', kind: 'ratio' },
      inertialConstant: { symbol: 'k_I', kind: 'ratio' },
    },
    outputs: { superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' } },
    range: [
      {
        of: 'symbol.reynolds-ergun',
        kind: 'ratio',
        min: 1,
        max: 2300,
        value: (bed, { superficialVelocity }) =>
          reynoldsErgun({ ...bed, superficialVelocity, voidage: voidageAt(bed.voidage, bed.expansion) }),
      },
    ],
    source: 'akgiray-saatci-2001',
    status: 'second-hand',
  },
  (bed) => {
    requireVoidage('voidage', bed.voidage);
    requireNotNegative('expansion', bed.expansion);
    const { viscous, inertial } = cubicTerms(bed);
    const expanded = voidageAt(bed.voidage, bed.expansion);
    const linear = viscous * (1 - expanded);
    const root = Math.sqrt(linear * linear + 4 * inertial * expanded ** 3);
    return { superficialVelocity: (2 * expanded ** 3) / (linear + root) };
  },
);
