import { equation } from '../meta/equation.ts';
import { archimedesNumber } from './terminal-velocity.ts';

/**
 * The upflow at which a bed begins to lift.
 *
 * $$ Re_{mf} = \sqrt{33.7^2 + 0.0408\,Ar} - 33.7 $$
 *
 * Valid 0.001 < Re < 4000 (limits from memory). Assumes: one size, settled voidage as in Wen and Yu's data.
 * Source: Wen and Yu (1966), second hand. Checked: checks/src/published/expansion.ts (X12, X13).
 * @throws RangeError on a non-finite or non-positive argument, or grains lighter than the water.
 * @example
 * ```ts
 * wenYu.compute({ diameter: 6e-4, particleDensity: 1280, density: 998.207, viscosity: 0.0010016 }).superficialVelocity // => 0.00059808
 * ```
 */
export const wenYu = equation(
  {
    key: 'wen-yu',
    title: 'equation.wen-yu',
    words: 'formula.wen-yu',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      particleDensity: { symbol: 'ρ_p', kind: 'density' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
    },
    outputs: {
      archimedes: { symbol: 'Ar', kind: 'ratio' },
      reynolds: { symbol: 'Re_mf', kind: 'ratio' },
      superficialVelocity: { symbol: 'v_mf', kind: 'superficial-velocity' },
    },
    range: [
      {
        of: 'symbol.reynolds',
        kind: 'ratio',
        min: 0.001,
        max: 4000,
        value: (_inputs, { reynolds }) => reynolds,
      },
    ],
    source: 'wen-yu-1966',
    status: 'second-hand',
  },
  (grain) => {
    const archimedes = archimedesNumber(grain);
    const lifting = 0.0408 * archimedes;
    const reynolds = lifting / (Math.sqrt(33.7 ** 2 + lifting) + 33.7);
    const superficialVelocity = (reynolds * grain.viscosity) / (grain.density * grain.diameter);
    return { archimedes, reynolds, superficialVelocity };
  },
);
