import { molarMass } from '../ions/molar-masses.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { toCelsius } from '../water/celsius.ts';
import { waterDensity } from '../water/density.ts';
import { straightBetween } from './interpolate.ts';

/** °C and grams in 100 g of water, saturated; as in checks/data/kcl-solubility.csv, never counted as a check. */
const saturated: readonly (readonly [celsius: number, grams: number])[] = [
  [0, 28],
  [5, 29.5],
  [10, 31],
  [20, 34.2],
  [30, 37.2],
  [40, 40.1],
];

/**
 * How much of saturated potassium chloride brine is salt: it depends on temperature far more than common salt.
 *
 * $$ w_s = \frac{g}{100 + g} $$ with g, grams in 100 g of water, on straight lines between the tabulated temperatures.
 *
 * Valid 0 to 40 °C.
 * Source: general chemistry pages (5, 10, 20 °C), the rest from memory. Status: memory; never counted.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * potassiumChlorideSolubility.compute({ temperature: 283.15 }).massFraction // => 0.23664122
 * ```
 */
export const potassiumChlorideSolubility = equation(
  {
    key: 'potassium-chloride-solubility',
    title: 'equation.potassium-chloride-solubility',
    words: 'formula.potassium-chloride-solubility',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { massFraction: { symbol: 'w_s', kind: 'mass-fraction' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 273.15, max: 313.15 })],
    source: 'potassium-chloride-pages',
    status: 'memory',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    const grams = straightBetween(saturated, toCelsius(temperature));
    return { massFraction: grams / (100 + grams) };
  },
);

/** Factors of m^1, m^1.5 and m^2: a constant and the powers 1, 1.5, 2 and 2.5 of T/Tc. */
const rises: readonly (readonly [number, number, number, number, number])[] = [
  [2332.802, -39637.418, 104801.288, -104266.828, 37030.556],
  [-1287.572, 23543.994, -63846.097, 65023.561, -23586.37],
  [206.032, -4003.757, 11128.162, -11595.475, 4295.498],
];
const criticalTemperature = 647.096;

/**
 * Density of potassium chloride brine near atmospheric pressure.
 *
 * $$ \rho = \rho_w + \sum_{i=1}^{3} m^{(i+1)/2} \left[ a_{i0} + \sum_{j=1}^{4} a_{ij} (T/T_c)^{(j+1)/2} \right] $$
 * with m the molality. The article's pressure term is left out: 0.04 kg/m3 at 0.1 MPa.
 *
 * Valid 25 to 110 °C and 0 to 4.5 mol/kg: the article goes to 200 °C, `waterDensity` no farther than 110. Colder water is
 * extrapolated (the apparent volume of the salt stays smooth down to 0 °C).
 * Source: Al Ghafri, Maitland & Trusler (2012), J. Chem. Eng. Data 57, 1288. Status: coefficients met at second hand.
 * No published density was at hand to check it against.
 * @throws RangeError on a mass fraction outside 0 to 1 or a non-positive temperature.
 * @example
 * ```ts
 * potassiumChlorideDensity.compute({ temperature: 298.15, massFraction: 0.2 }).density // => 1130.81
 * ```
 */
export const potassiumChlorideDensity = equation(
  {
    key: 'potassium-chloride-density',
    title: 'equation.potassium-chloride-density',
    words: 'formula.potassium-chloride-density',
    inputs: {
      temperature: { symbol: 'T', kind: 'temperature' },
      massFraction: { symbol: 'w', kind: 'mass-fraction' },
    },
    outputs: { density: { symbol: 'ρ', kind: 'density' } },
    range: [
      inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 298.15, max: 383.15 }),
      inputWithin('massFraction', 'symbol.mass-fraction', 'mass-fraction', { min: 0, max: 0.2512 }),
    ],
    source: 'al-ghafri-2012',
    status: 'second-hand',
  },
  ({ temperature, massFraction }) => {
    requireNotNegative('massFraction', massFraction);
    if (massFraction >= 1) throw new RangeError(`massFraction must be below 1, got ${massFraction}`);
    const molality = massFraction / (1 - massFraction) / molarMass.potassiumChloride;
    const theta = temperature / criticalTemperature;
    const rise = rises.reduce((sum, [a0, a1, a2, a3, a4], i) => {
      const factor = a0 + a1 * theta + a2 * theta ** 1.5 + a3 * theta ** 2 + a4 * theta ** 2.5;
      return sum + factor * molality ** (1 + i / 2);
    }, 0);
    return { density: waterDensity.compute({ temperature }).density + rise };
  },
);
