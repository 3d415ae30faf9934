import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { waterDensity } from '../water/density.ts';
import { brineDensity } from './density.ts';

const temperatureRange = inputWithin('temperature', 'symbol.temperature', 'temperature', {
  min: 273.15,
  max: 353.15,
});

/**
 * Salt that one volume of water takes up to reach a strength; with the strength of saturation, all it can dissolve.
 *
 * $$ s = \frac{w}{1 - w}\,\rho_w(T) $$
 *
 * Valid 0 to 80 °C, up to saturation.
 * Source: conservation of mass; density of water as `waterDensity`.
 * Checked: checks/src/published/brine.ts (2.990 lb/gal at 60 °F).
 * @throws RangeError on a mass fraction outside 0 to 1 or a non-positive temperature.
 * @example
 * ```ts
 * saltPerWater.compute({ temperature: 288.7056, massFraction: 0.26395 }).saltPerWater // => 358.251
 * ```
 */
export const saltPerWater = equation(
  {
    key: 'salt-per-water',
    title: 'equation.salt-per-water',
    words: 'formula.salt-per-water',
    inputs: {
      temperature: { symbol: 'T', kind: 'temperature' },
      massFraction: { symbol: 'w', kind: 'mass-fraction' },
    },
    outputs: { saltPerWater: { symbol: 's', kind: 'concentration' } },
    range: [
      temperatureRange,
      inputWithin('massFraction', 'symbol.mass-fraction', 'mass-fraction', { min: 0, max: 0.28 }),
    ],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ temperature, massFraction }) => {
    requireNotNegative('massFraction', massFraction);
    if (massFraction >= 1) throw new RangeError(`massFraction must be below 1, got ${massFraction}`);
    return {
      saltPerWater: (massFraction / (1 - massFraction)) * waterDensity.compute({ temperature }).density,
    };
  },
);

/**
 * Brine that salt and water make: no more dissolves than saturation allows, and the brine is more than the water.
 *
 * $$ m = \min\!\left(m_s,\; \frac{w_s}{1 - w_s}\rho_w V_w\right), \quad w = \frac{m}{m + \rho_w V_w}, \quad
 *    V = \frac{m + \rho_w V_w}{\rho(T, w)} $$
 *
 * Valid 0 to 80 °C, up to saturation. Assumes salt and water have stood long enough.
 * Source: conservation of mass; densities as `waterDensity` and `brineDensity`.
 * Checked: checks/src/published/brine.ts (U4, U5).
 * @throws RangeError on a negative salt mass, a non-positive volume or temperature.
 * @example
 * ```ts
 * brineMade.compute({ saltMass: 8, waterVolume: 0.02, temperature: 288.71, saturation: 0.26395 }).brineVolume // => 0.0225678
 * ```
 */
export const brineMade = equation(
  {
    key: 'brine-made',
    title: 'equation.brine-made',
    words: 'formula.brine-made',
    inputs: {
      saltMass: { symbol: 'm_s', kind: 'mass' },
      waterVolume: { symbol: 'V_w', kind: 'volume' },
      temperature: { symbol: 'T', kind: 'temperature' },
      saturation: { symbol: 'w_s', kind: 'mass-fraction' },
    },
    outputs: {
      dissolvedSalt: { symbol: 'm', kind: 'mass' },
      massFraction: { symbol: 'w', kind: 'mass-fraction' },
      brineVolume: { symbol: 'V', kind: 'volume' },
      saltConcentration: { symbol: 'c', kind: 'concentration' },
    },
    range: [
      temperatureRange,
      inputWithin('saturation', 'symbol.saturation', 'mass-fraction', { min: 0.2331, max: 0.2812 }),
    ],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ saltMass, waterVolume, temperature, saturation }) => {
    requireNotNegative('saltMass', saltMass);
    requirePositive('waterVolume', waterVolume);
    const water = waterDensity.compute({ temperature }).density * waterVolume;
    const most = saltPerWater.compute({ temperature, massFraction: saturation }).saltPerWater * waterVolume;
    const dissolvedSalt = Math.min(saltMass, most);
    const massFraction = dissolvedSalt / (dissolvedSalt + water);
    const brineVolume = (dissolvedSalt + water) / brineDensity.compute({ temperature, massFraction }).density;
    return { dissolvedSalt, massFraction, brineVolume, saltConcentration: dissolvedSalt / brineVolume };
  },
);
