import { molarMass } from '../ions/molar-masses.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { celsiusZero } from '../water/celsius.ts';
import { waterDensity } from '../water/density.ts';
import { cubicThroughFour } from './interpolate.ts';
import { molalities, specificVolumes } from './specific-volume-table.ts';

const massFractionOf = (molality: number): number =>
  (molality * molarMass.sodiumChloride) / (1 + molality * molarMass.sodiumChloride);

const temperatures = specificVolumes.map(({ celsius }) => celsius + celsiusZero);
const massFractions = [0, ...molalities.map(massFractionOf)];

/** Each row of the table begins with pure water, m3/kg. */
const isotherms = specificVolumes.map(({ celsius, volumes }) => [
  1 / waterDensity.compute({ temperature: celsius + celsiusZero }).density,
  ...volumes.map((volume) => volume * 1e-3),
]);

/** The table's temperatures, and salt up to saturation near 45 °C: see `brineDensity` for what stands behind the end. */
export const brineRange = [
  inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 273.15, max: 353.15 }),
  inputWithin('massFraction', 'symbol.mass-fraction', 'mass-fraction', { min: 0, max: 0.268 }),
];

/**
 * Density of sodium chloride brine at 0.1 MPa.
 *
 * $$ 1/\rho = v(w, T) $$ cubic through the four nearest tabulated mass fractions, then through the four nearest
 * tabulated temperatures, pure water included.
 *
 * Valid 0 to 80 °C and 0 to 22.61 % (5 mol/kg); up to 26.8 % the last cubic goes on: within 0.1 kg/m3 of the 26 %
 * handbook value at 20 °C and 0.7 of Sparrow's equation up to 60 °C; beyond 26 % nothing published was compared.
 * Outside: the value, and `evaluate` adds the issue 'out-of-range'.
 * Source: Rogers & Pitzer (1982), J. Phys. Chem. Ref. Data 11, 15. Status: table seen in a reprint.
 * Checked: checks/src/published/brine.ts. Error: 0.2 kg/m3 against a second handbook at 20 °C, measured there.
 * @throws RangeError on a non-positive temperature or a negative mass fraction.
 * @example
 * ```ts
 * brineDensity.compute({ temperature: 293.15, massFraction: 0.1 }).density // => 1070.749
 * ```
 */
export const brineDensity = equation(
  {
    key: 'brine-density',
    title: 'equation.brine-density',
    words: 'formula.brine-density',
    inputs: {
      temperature: { symbol: 'T', kind: 'temperature' },
      massFraction: { symbol: 'w', kind: 'mass-fraction' },
    },
    outputs: { density: { symbol: 'ρ', kind: 'density' } },
    range: brineRange,
    source: 'rogers-pitzer-1982',
    status: 'seen',
  },
  ({ temperature, massFraction }) => {
    requirePositive('temperature', temperature);
    requireNotNegative('massFraction', massFraction);
    const volumes = isotherms.map((isotherm) => cubicThroughFour(massFractions, isotherm, massFraction));
    return { density: 1 / cubicThroughFour(temperatures, volumes, temperature) };
  },
);

/**
 * Salt in a volume of brine.
 *
 * $$ c = w\,\rho $$
 *
 * Valid as `brineDensity`. Source: definition. Checked: checks/src/published/brine.ts.
 * @throws RangeError on a non-positive temperature or a negative mass fraction.
 * @example
 * ```ts
 * brineSalt.compute({ temperature: 293.15, massFraction: 0.1 }).saltConcentration // => 107.0749
 * ```
 */
export const brineSalt = equation(
  {
    key: 'brine-salt',
    title: 'equation.brine-salt',
    words: 'formula.brine-salt',
    inputs: brineDensity.meta.inputs,
    outputs: { saltConcentration: { symbol: 'c', kind: 'concentration' } },
    range: brineRange,
    source: 'rogers-pitzer-1982',
    status: 'seen',
  },
  ({ temperature, massFraction }) => ({
    saltConcentration: massFraction * brineDensity.compute({ temperature, massFraction }).density,
  }),
);
