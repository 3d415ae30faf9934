import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';

const gasConstant = 461.51805;
const scaleTemperature = 10;
const pressure = 1e5;

const hot: readonly (readonly [power: number, factor: number])[] = [
  [0, 1.93763157e-2],
  [4, 6.74458446e3],
  [5, -2.22521604e5],
  [7, 1.00231247e8],
  [8, -1.63552118e9],
  [9, 8.32299658e9],
];
const cold: readonly (readonly [power: number, factor: number])[] = [
  [1, 5.78545292e-3],
  [2, -1.53195665e-2],
  [3, 3.11337859e-2],
  [4, -4.23546241e-2],
  [5, 3.38713507e-2],
  [6, -1.19946761e-2],
];

const powerSum = (terms: readonly (readonly [number, number])[], x: number): number =>
  terms.reduce((sum, [power, factor]) => sum + factor * x ** power, 0);

/**
 * Density of air-free liquid water at 0.1 MPa.
 *
 * $$ \frac{1}{\rho} = \frac{R T_R}{p_0} \left[ \sum_i a_i \alpha^{n_i} + \sum_i b_i \beta^{m_i} \right], \quad
 *    \alpha = \frac{T_R}{593 - T},\; \beta = \frac{T_R}{T - 232},\; T_R = 10\ \mathrm{K} $$
 *
 * Valid 253.15 to 383.15 K, metastable water included. Mains pressure (0.5 MPa) adds 0.2 kg/m3.
 * Source: IAPWS SR6-08(2011), equation 4. Status: coefficients met at second hand, release not opened.
 * Checked: checks/src/published/water.ts. Error: 0.0007 kg/m3 against IAPWS-95 at 0.101325 MPa, measured there.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * waterDensity.compute({ temperature: 293.15 }).density // => 998.2065
 * ```
 */
export const waterDensity = equation(
  {
    key: 'water-density',
    title: 'equation.water-density',
    words: 'formula.water-density',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { density: { symbol: 'ρ', kind: 'density' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 253.15, max: 383.15 })],
    source: 'iapws-sr6-08',
    status: 'second-hand',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    const alpha = scaleTemperature / (593 - temperature);
    const beta = scaleTemperature / (temperature - 232);
    const sum = powerSum(hot, alpha) + powerSum(cold, beta);
    return { density: pressure / (gasConstant * scaleTemperature * sum) };
  },
);
