import { brineDensity, brineRange } from '../brine/density.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { waterDensity } from '../water/density.ts';

/**
 * Water to refill so that it dissolves the salt of one regeneration.
 *
 * $$ V_w = m / s $$ with s the salt one volume of water dissolves (`saltPerWater` at saturation).
 *
 * Valid when the water stands on salt until saturated (hours).
 * Source: conservation of mass. Checked: checks/src/published/softening.ts (S12, S14).
 * @throws RangeError on a negative mass or a non-positive solubility.
 * @example
 * ```ts
 * refillWater.compute({ saltMass: 7.26, saltPerWater: 358.3 }).refillWater // => 0.0202623
 * ```
 */
export const refillWater = equation(
  {
    key: 'refill-water',
    title: 'equation.refill-water',
    words: 'formula.refill-water',
    inputs: {
      saltMass: { symbol: 'm', kind: 'mass' },
      saltPerWater: { symbol: 's', kind: 'concentration' },
    },
    outputs: { refillWater: { symbol: 'V_w', kind: 'volume' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ saltMass, saltPerWater }) => {
    requireNotNegative('saltMass', saltMass);
    requirePositive('saltPerWater', saltPerWater);
    return { refillWater: saltMass / saltPerWater };
  },
);

/**
 * How long to refill.
 *
 * $$ t = V_w / Q $$
 *
 * Valid while the refill flow holds. Source: definition. Checked: checks/src/published/softening.ts (S12, S14).
 * @throws RangeError on a negative volume or a non-positive flow.
 * @example
 * ```ts
 * refillTime.compute({ refillWater: 0.02, refillFlow: 3.15e-5 }).refillTime // => 634.921
 * ```
 */
export const refillTime = equation(
  {
    key: 'refill-time',
    title: 'equation.refill-time',
    words: 'formula.refill-time',
    inputs: {
      refillWater: { symbol: 'V_w', kind: 'volume' },
      refillFlow: { symbol: 'Q', kind: 'flow' },
    },
    outputs: { refillTime: { symbol: 't', kind: 'time' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ refillWater, refillFlow }) => {
    requireNotNegative('refillWater', refillWater);
    requirePositive('refillFlow', refillFlow);
    return { refillTime: refillWater / refillFlow };
  },
);

/**
 * Salt that a set refill time really gives: what a found program regenerates with.
 *
 * $$ m = t\,Q\,s $$
 *
 * Valid when there is salt enough in the tank and it has stood until saturated.
 * Source: conservation of mass.
 * @throws RangeError on a negative time or flow, or a non-positive solubility.
 * @example
 * ```ts
 * saltFromRefill.compute({ refillTime: 600, refillFlow: 3.15e-5, saltPerWater: 358.3 }).saltMass // => 6.77187
 * ```
 */
export const saltFromRefill = equation(
  {
    key: 'salt-from-refill',
    title: 'equation.salt-from-refill',
    words: 'formula.salt-from-refill',
    inputs: {
      refillTime: { symbol: 't', kind: 'time' },
      refillFlow: { symbol: 'Q', kind: 'flow' },
      saltPerWater: { symbol: 's', kind: 'concentration' },
    },
    outputs: { saltMass: { symbol: 'm', kind: 'mass' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ refillTime, refillFlow, saltPerWater }) => {
    requireNotNegative('refillTime', refillTime);
    requireNotNegative('refillFlow', refillFlow);
    requirePositive('saltPerWater', saltPerWater);
    return { saltMass: refillTime * refillFlow * saltPerWater };
  },
);

/**
 * Brine that the refill water becomes.
 *
 * $$ V = \frac{\rho_w V_w}{(1 - w)\,\rho(T, w)} $$
 *
 * Valid 0 to 80 °C, up to saturation.
 * Source: conservation of mass; densities as `waterDensity` and `brineDensity`.
 * Checked: checks/src/published/softening.ts (S12, S14).
 * @throws RangeError on a negative volume, a mass fraction outside 0 to 1 or a non-positive temperature.
 * @example
 * ```ts
 * brineFromRefill.compute({ refillWater: 0.02, temperature: 288.71, massFraction: 0.26395 }).brineVolume // => 0.02257
 * ```
 */
export const brineFromRefill = equation(
  {
    key: 'brine-from-refill',
    title: 'equation.brine-from-refill',
    words: 'formula.brine-from-refill',
    inputs: {
      refillWater: { symbol: 'V_w', kind: 'volume' },
      temperature: { symbol: 'T', kind: 'temperature' },
      massFraction: { symbol: 'w', kind: 'mass-fraction' },
    },
    outputs: { brineVolume: { symbol: 'V', kind: 'volume' } },
    range: brineRange,
    source: 'mass-balance',
    status: 'seen',
  },
  ({ refillWater, temperature, massFraction }) => {
    requireNotNegative('refillWater', refillWater);
    requireNotNegative('massFraction', massFraction);
    if (massFraction >= 1) throw new RangeError(`massFraction must be below 1, got ${massFraction}`);
    const water = waterDensity.compute({ temperature }).density * refillWater;
    const { density } = brineDensity.compute({ temperature, massFraction });
    return { brineVolume: water / (1 - massFraction) / density };
  },
);
