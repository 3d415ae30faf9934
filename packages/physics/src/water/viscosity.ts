import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { waterDensity } from './density.ts';

const validity = { min: 253.15, max: 383.15 };

/**
 * Dynamic viscosity of liquid water at 0.1 MPa.
 *
 * $$ \frac{\mu}{10^{-6}\,\mathrm{Pa\,s}} = 280.68\,\theta^{-1.9} + 511.45\,\theta^{-7.7} + 61.131\,\theta^{-19.6}
 *    + 0.45903\,\theta^{-40}, \quad \theta = T / 300\ \mathrm{K} $$
 *
 * Valid 253.15 to 383.15 K.
 * Source: IAPWS SR6-08(2011), equation 7. Status: coefficients met at second hand, release not opened.
 * Checked: checks/src/published/water.ts. Error: 3.3e-5 relative against IAPWS R12-08, measured there.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * waterViscosity.compute({ temperature: 293.15 }).dynamicViscosity // => 0.00100157
 * ```
 */
export const waterViscosity = equation(
  {
    key: 'water-viscosity',
    title: 'equation.water-viscosity',
    words: 'formula.water-viscosity',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { dynamicViscosity: { symbol: 'μ', kind: 'dynamic-viscosity' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', validity)],
    source: 'iapws-sr6-08',
    status: 'second-hand',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    const theta = temperature / 300;
    const micro =
      280.68 * theta ** -1.9 + 511.45 * theta ** -7.7 + 61.131 * theta ** -19.6 + 0.45903 * theta ** -40;
    return { dynamicViscosity: micro * 1e-6 };
  },
);

/**
 * Kinematic viscosity of liquid water at 0.1 MPa.
 *
 * $$ \nu = \mu / \rho $$
 *
 * Valid 253.15 to 383.15 K.
 * Source: definition; viscosity and density as `waterViscosity` and `waterDensity`.
 * Checked: checks/src/published/water.ts.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * waterKinematicViscosity.compute({ temperature: 293.15 }).kinematicViscosity // => 1.003367e-6
 * ```
 */
export const waterKinematicViscosity = equation(
  {
    key: 'water-kinematic-viscosity',
    title: 'equation.water-kinematic-viscosity',
    words: 'formula.water-kinematic-viscosity',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { kinematicViscosity: { symbol: 'ν', kind: 'kinematic-viscosity' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', validity)],
    source: 'iapws-sr6-08',
    status: 'second-hand',
  },
  ({ temperature }) => {
    const { dynamicViscosity } = waterViscosity.compute({ temperature });
    const { density } = waterDensity.compute({ temperature });
    return { kinematicViscosity: dynamicViscosity / density };
  },
);
