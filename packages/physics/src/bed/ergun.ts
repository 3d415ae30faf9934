import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { requireVoidage } from './voidage.ts';

/** Ergun's constants for spheres. */
export const spheres = { viscousConstant: 150, inertialConstant: 1.75 } as const;

type Packed = {
  readonly diameter: number;
  readonly voidage: number;
  readonly superficialVelocity: number;
  readonly density: number;
  readonly viscosity: number;
};

/** Reynolds number Ergun correlated with: ρ v d / (μ (1 − ε)). */
export const reynoldsErgun = (bed: Packed): number =>
  (bed.density * bed.superficialVelocity * bed.diameter) / (bed.viscosity * (1 - bed.voidage));

const requirePacked = (bed: Packed): void => {
  requirePositive('diameter', bed.diameter);
  requireVoidage('voidage', bed.voidage);
  requireNotNegative('superficialVelocity', bed.superficialVelocity);
  requirePositive('density', bed.density);
  requirePositive('viscosity', bed.viscosity);
};

/**
 * Pressure gradient of water through a settled bed of grains that are not spheres, in its two parts.
 *
 * $$ \frac{\Delta P}{L} = k_V\frac{\mu(1-\varepsilon)^2 v}{\varepsilon^3 d^2}
 *    + k_I\frac{\rho(1-\varepsilon) v^2}{\varepsilon^3 d} $$
 *
 * Valid 1 < Re < 2300 with Re = ρ v d / (μ (1 − ε)). Outside: the value, and `evaluate` adds the issue.
 * Assumes: one size, no wall effect, a settled bed.
 * Source: Ergun (1952), second hand; constants of other media from their own source (MWH: 228 and 4.4 for anthracite).
 * Checked: checks/src/published/expansion.ts (X7).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * ergunWithConstants.compute({ diameter: 8e-4, voidage: 0.4, superficialVelocity: 1e-3, density: 1e3, viscosity: 1e-3, viscousConstant: 150, inertialConstant: 1.75 }).viscousGradient // => 1318.359
 * ```
 */
export const ergunWithConstants = equation(
  {
    key: 'ergun-with-constants',
    title: 'equation.ergun-with-constants',
    words: 'formula.ergun-with-constants',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      voidage: { symbol: 'ε', kind: 'ratio' },
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
      viscousConstant: { symbol: 'k_V', kind: 'ratio' },
      inertialConstant: { symbol: 'k_I', kind: 'ratio' },
    },
    outputs: {
      viscousGradient: { symbol: 'ΔP_V/L', kind: 'pressure-gradient' },
      inertialGradient: { symbol: 'ΔP_I/L', kind: 'pressure-gradient' },
      pressureGradient: { symbol: 'ΔP/L', kind: 'pressure-gradient' },
    },
    range: [{ of: 'symbol.reynolds-ergun', kind: 'ratio', min: 1, max: 2300, value: reynoldsErgun }],
    source: 'ergun-1952',
    status: 'second-hand',
  },
  (bed) => {
    requirePacked(bed);
    requirePositive('viscousConstant', bed.viscousConstant);
    requireNotNegative('inertialConstant', bed.inertialConstant);
    const { diameter: d, voidage, superficialVelocity: v, density, viscosity } = bed;
    const solid = 1 - voidage;
    const viscousGradient = (bed.viscousConstant * viscosity * solid ** 2 * v) / (voidage ** 3 * d ** 2);
    const inertialGradient = (bed.inertialConstant * density * solid * v ** 2) / (voidage ** 3 * d);
    return { viscousGradient, inertialGradient, pressureGradient: viscousGradient + inertialGradient };
  },
);

/**
 * Pressure gradient of water through a settled bed of spheres.
 *
 * $$ \frac{\Delta P}{L} = 150\frac{\mu(1-\varepsilon)^2 v}{\varepsilon^3 d^2}
 *    + 1.75\frac{\rho(1-\varepsilon) v^2}{\varepsilon^3 d} $$
 *
 * Valid 1 < Re < 2300 with Re = ρ v d / (μ (1 − ε)); above 700 it reads high (Jones and Krier 1983, second hand).
 * Outside: the value, and `evaluate` adds the issue.
 * Assumes: one size of sphere, no wall effect, a settled bed.
 * Source: Ergun (1952), second hand. Checked: checks/src/published/expansion.ts (X9, X10).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * ergun.compute({ diameter: 8e-4, voidage: 0.4, superficialVelocity: 1e-3, density: 1e3, viscosity: 1e-3 }).pressureGradient // => 1338.867
 * ```
 */
export const ergun = equation(
  {
    key: 'ergun',
    title: 'equation.ergun',
    words: 'formula.ergun',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      voidage: { symbol: 'ε', kind: 'ratio' },
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
    },
    outputs: { pressureGradient: { symbol: 'ΔP/L', kind: 'pressure-gradient' } },
    range: [{ of: 'symbol.reynolds-ergun', kind: 'ratio', min: 1, max: 2300, value: reynoldsErgun }],
    source: 'ergun-1952',
    status: 'second-hand',
  },
  (bed) => ({
    pressureGradient: ergunWithConstants.compute({ ...bed, ...spheres }).pressureGradient,
  }),
);

/**
 * Ergun's two constants for grains of a given sphericity.
 *
 * $$ k_V = 150/\psi^2 \qquad k_I = 1.75/\psi $$
 *
 * Valid 0.3 ≤ ψ ≤ 1 (a sphere has 1; our own lower limit, below any medium in the tables).
 * Source: Akgiray and Saatçı (2001), abstract seen. Checked: checks/src/published/expansion.ts (X3, X4).
 * @throws RangeError on a sphericity that is not positive.
 * @example
 * ```ts
 * ergunConstants.compute({ sphericity: 0.55 }).viscousConstant // => 495.868
 * ```
 */
export const ergunConstants = equation(
  {
    key: 'ergun-constants',
    title: 'equation.ergun-constants',
    words: 'formula.ergun-constants',
    inputs: { sphericity: { symbol: 'ψ', kind: 'ratio' } },
    outputs: {
      viscousConstant: { symbol: 'k_V', kind: 'ratio' },
      inertialConstant: { symbol: 'k_I', kind: 'ratio' },
    },
    range: [
      {
        of: 'symbol.sphericity',
        kind: 'ratio',
        min: 0.3,
        max: 1,
        value: ({ sphericity }) => sphericity,
      },
    ],
    source: 'akgiray-saatci-2001',
    status: 'second-hand',
  },
  ({ sphericity }) => {
    requirePositive('sphericity', sphericity);
    return {
      viscousConstant: spheres.viscousConstant / sphericity ** 2,
      inertialConstant: spheres.inertialConstant / sphericity,
    };
  },
);
