import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { circle } from '../vessel/circle.ts';

const jetSpeed = (pressureDrop: number, density: number): number => Math.sqrt((2 * pressureDrop) / density);

/**
 * Flow through a hole of known area, such as a torn seal.
 *
 * $$ Q = C_d A\sqrt{2\Delta P/\rho} $$
 *
 * Assumes: free discharge, nothing for the speed of approach. An elastic flow control is not a fixed hole.
 * Source: Bernoulli with a discharge coefficient (memory). Checked: checks/src/published/pipe-orifice.ts (P6, P7).
 * @throws RangeError on a non-finite or negative argument.
 * @example
 * ```ts
 * leakFlow.compute({ area: 1e-6, pressureDrop: 1e5, dischargeCoefficient: 0.62, density: 1000 }).flow // => 8.768e-6
 * ```
 */
export const leakFlow = equation(
  {
    key: 'leak-flow',
    title: 'equation.leak-flow',
    words: 'formula.leak-flow',
    inputs: {
      area: { symbol: 'A', kind: 'area' },
      pressureDrop: { symbol: 'ΔP', kind: 'pressure' },
      dischargeCoefficient: { symbol: 'C_d', kind: 'ratio' },
      density: { symbol: 'ρ', kind: 'density' },
    },
    outputs: { flow: { symbol: 'Q', kind: 'flow' } },
    range: [],
    source: 'bernoulli-orifice',
    status: 'memory',
  },
  ({ area, pressureDrop, dischargeCoefficient, density }) => {
    requireNotNegative('area', area);
    requireNotNegative('pressureDrop', pressureDrop);
    requirePositive('dischargeCoefficient', dischargeCoefficient);
    requirePositive('density', density);
    return { flow: dischargeCoefficient * area * jetSpeed(pressureDrop, density) };
  },
);

/**
 * Flow through a round hole that discharges freely.
 *
 * $$ Q = C_d \frac{\pi d^2}{4}\sqrt{2\Delta P/\rho} $$
 *
 * Assumes and source: as `leakFlow`. Checked: checks/src/published/pipe-orifice.ts (P6, P7).
 * @throws RangeError on a non-finite or negative argument.
 * @example
 * ```ts
 * orificeFlow.compute({ diameter: 0.003175, pressureDrop: 413685.4, dischargeCoefficient: 0.62, density: 998.2 }).flow // => 1.41322e-4
 * ```
 */
export const orificeFlow = equation(
  {
    key: 'orifice-flow',
    title: 'equation.orifice-flow',
    words: 'formula.orifice-flow',
    inputs: {
      diameter: { symbol: 'd', kind: 'length' },
      pressureDrop: { symbol: 'ΔP', kind: 'pressure' },
      dischargeCoefficient: { symbol: 'C_d', kind: 'ratio' },
      density: { symbol: 'ρ', kind: 'density' },
    },
    outputs: { flow: { symbol: 'Q', kind: 'flow' } },
    range: [],
    source: 'bernoulli-orifice',
    status: 'memory',
  },
  ({ diameter, ...hole }) => {
    requireNotNegative('diameter', diameter);
    return leakFlow.compute({ ...hole, area: circle(diameter) });
  },
);

/**
 * The round hole that lets a flow through at a pressure drop.
 *
 * $$ d = \sqrt{\frac{4Q}{\pi C_d\sqrt{2\Delta P/\rho}}} $$
 *
 * Assumes and source: as `leakFlow`. Checked: round trip with `orificeFlow`.
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * orificeDiameter.compute({ flow: 1.41322e-4, pressureDrop: 413685.4, dischargeCoefficient: 0.62, density: 998.2 }).diameter // => 0.003175
 * ```
 */
export const orificeDiameter = equation(
  {
    key: 'orifice-diameter',
    title: 'equation.orifice-diameter',
    words: 'formula.orifice-diameter',
    inputs: {
      flow: { symbol: 'Q', kind: 'flow' },
      pressureDrop: { symbol: 'ΔP', kind: 'pressure' },
      dischargeCoefficient: { symbol: 'C_d', kind: 'ratio' },
      density: { symbol: 'ρ', kind: 'density' },
    },
    outputs: { diameter: { symbol: 'd', kind: 'length' } },
    range: [],
    source: 'bernoulli-orifice',
    status: 'memory',
  },
  ({ flow, pressureDrop, dischargeCoefficient, density }) => {
    requireNotNegative('flow', flow);
    requirePositive('pressureDrop', pressureDrop);
    requirePositive('dischargeCoefficient', dischargeCoefficient);
    requirePositive('density', density);
    const area = flow / (dischargeCoefficient * jetSpeed(pressureDrop, density));
    return { diameter: Math.sqrt((4 * area) / Math.PI) };
  },
);
