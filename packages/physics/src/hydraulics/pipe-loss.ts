import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { circle } from '../vessel/circle.ts';
import { frictionRegimes, pipeFriction } from './friction.ts';

/**
 * Pressure that a straight round pipe takes from the flow.
 *
 * $$ \Delta P = f\,\frac{L}{D}\,\frac{\rho u^2}{2} $$
 *
 * Friction factor: 64/Re below Re 2000, Colebrook above 4000, a straight line between (our own choice; `evaluate`
 * adds the issue outside both). Assumes: full pipe, fittings not counted.
 * Source: Darcy and Weisbach (memory), Colebrook (1939) second hand.
 * Checked: checks/src/published/pipe-orifice.ts (P1, P2, P3).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * pipeLoss.compute({ flow: 0.2, diameter: 0.2, length: 500, roughness: 2.6e-4, density: 900, viscosity: 0.009 }).frictionFactor // => 0.022724
 * ```
 */
export const pipeLoss = equation(
  {
    key: 'pipe-loss',
    title: 'equation.pipe-loss',
    words: 'formula.pipe-loss',
    inputs: {
      flow: { symbol: 'Q', kind: 'flow' },
      diameter: { symbol: 'D', kind: 'length' },
      length: { symbol: 'L', kind: 'length' },
      roughness: { symbol: 'k', kind: 'length' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
    },
    outputs: {
      velocity: { symbol: 'u', kind: 'speed' },
      reynolds: { symbol: 'Re', kind: 'ratio' },
      frictionFactor: { symbol: 'f', kind: 'ratio' },
      pressureLoss: { symbol: 'ΔP', kind: 'pressure' },
    },
    range: [
      {
        of: 'symbol.reynolds',
        kind: 'ratio',
        min: frictionRegimes.turbulentFrom,
        value: (_inputs, { reynolds }) =>
          reynolds <= frictionRegimes.laminarTo ? frictionRegimes.turbulentFrom : reynolds,
      },
      {
        of: 'symbol.relative-roughness',
        kind: 'ratio',
        max: 0.05,
        value: ({ roughness, diameter }) => roughness / diameter,
      },
    ],
    source: 'darcy-weisbach',
    status: 'memory',
  },
  ({ flow, diameter, length, roughness, density, viscosity }) => {
    requirePositive('flow', flow);
    requirePositive('diameter', diameter);
    requireNotNegative('length', length);
    requirePositive('density', density);
    requirePositive('viscosity', viscosity);
    const velocity = flow / circle(diameter);
    const reynolds = (density * velocity * diameter) / viscosity;
    const { frictionFactor } = pipeFriction({ reynolds, relativeRoughness: roughness / diameter });
    const pressureLoss = (frictionFactor * length * density * velocity ** 2) / (2 * diameter);
    return { velocity, reynolds, frictionFactor, pressureLoss };
  },
);
