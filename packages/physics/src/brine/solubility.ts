import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { toCelsius } from '../water/celsius.ts';
import { straightBetween } from './interpolate.ts';

/** °C and mass % of saturated sodium chloride brine: table of the Salt Institute, as in checks/data/nacl-solubility.csv. */
const saturated: readonly (readonly [celsius: number, percent: number])[] = [
  [-17.78, 23.83],
  [0, 26.29],
  [0.1, 26.31],
  [4.44, 26.33],
  [10, 26.36],
  [15.56, 26.395],
  [21.11, 26.45],
  [26.67, 26.52],
  [37.78, 26.68],
  [51.67, 26.92],
  [65.56, 27.21],
  [79.44, 27.62],
  [93.33, 27.91],
  [100, 28.12],
];

/**
 * How much of saturated brine is salt.
 *
 * $$ w_s = w_s(t) $$ straight lines between the tabulated temperatures.
 *
 * Valid -17.78 to 100 °C; below 0.1 °C the solid is the dihydrate.
 * Source: Salt Institute, Solubility of Salt at Various Temperatures. Status: seen.
 * Checked: checks/src/published/brine.ts. Error: 0.03 points against Sparrow (2003) up to 52 °C.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * saltSolubility.compute({ temperature: 288.71 }).massFraction // => 0.26395
 * ```
 */
export const saltSolubility = equation(
  {
    key: 'salt-solubility',
    title: 'equation.salt-solubility',
    words: 'formula.salt-solubility',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { massFraction: { symbol: 'w_s', kind: 'mass-fraction' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 255.37, max: 373.15 })],
    source: 'salt-institute',
    status: 'seen',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    return { massFraction: straightBetween(saturated, toCelsius(temperature)) / 100 };
  },
);

/**
 * How much of saturated brine is salt, a second method.
 *
 * $$ w_s = 0.2628 + 62.75\cdot10^{-6}\,t + 1.084\cdot10^{-6}\,t^2 $$ with t in °C.
 *
 * Valid 0 to 100 °C here (the article's own range was not seen).
 * Source: Sparrow (2003), Desalination 159, 161, equation 5. Status: coefficients met at second hand.
 * Checked: checks/src/published/brine.ts.
 * @throws RangeError on a non-finite or non-positive temperature.
 * @example
 * ```ts
 * saltSolubilitySparrow.compute({ temperature: 298.15 }).massFraction // => 0.26504625
 * ```
 */
export const saltSolubilitySparrow = equation(
  {
    key: 'salt-solubility-sparrow',
    title: 'equation.salt-solubility-sparrow',
    words: 'formula.salt-solubility-sparrow',
    inputs: { temperature: { symbol: 'T', kind: 'temperature' } },
    outputs: { massFraction: { symbol: 'w_s', kind: 'mass-fraction' } },
    range: [inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 273.15, max: 373.15 })],
    source: 'sparrow-2003',
    status: 'second-hand',
  },
  ({ temperature }) => {
    requirePositive('temperature', temperature);
    const celsius = toCelsius(temperature);
    return { massFraction: 0.2628 + 62.75e-6 * celsius + 1.084e-6 * celsius ** 2 };
  },
);
