import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { toCelsius } from '../water/celsius.ts';
import { freeIons } from './ion-pairs.ts';
import { type IonEquivalents, type IonName, ionNames, ions } from './ions.ts';

/** Molar conductivity = rest + slope t + curve t² - (drag terms) √I / (1 + size √I), mS kg/(cm mol), t in °C. */
type Carrier = {
  readonly free: readonly [curve: number, slope: number, rest: number];
  readonly drag: readonly [curve: number, slope: number, rest: number];
  readonly size: number;
};

const carriers: Readonly<Record<IonName | 'hydrogen', Carrier>> = {
  calcium: { free: [0.009645, 1.984, 62.28], drag: [0.03174, 2.334, 132.3], size: 2.8 },
  magnesium: { free: [0.01068, 1.695, 57.16], drag: [0.02453, 1.915, 80.5], size: 2.1 },
  sodium: { free: [0.003763, 0.877, 26.23], drag: [0.00027, 1.141, 32.07], size: 1.7 },
  potassium: { free: [0.003046, 1.261, 40.7], drag: [0.00535, 0.9316, 22.59], size: 1.5 },
  ammonium: { free: [0.003341, 1.285, 39.04], drag: [0.00132, 0.607, 11.19], size: 0.3 },
  iron: { free: [0.009939, 1.878, 54.8], drag: [0.03997, 3.217, 164.5], size: 4 },
  manganese: { free: [0.01275, 2.109, 46.19], drag: [0.1071, 9.023, 135.4], size: 7.6 },
  strontium: { free: [0.006649, 2.069, 61.63], drag: [0.00702, 0.9009, 33.41], size: 0.1 },
  barium: { free: [0.01059, 2.09, 68.1], drag: [0.03127, 2.248, 93.91], size: 1.9 },
  hydrogen: { free: [-0.01414, 5.355, 224.2], drag: [-0.00918, 1.842, 39.23], size: 0.3 },
  chloride: { free: [0.003817, 1.337, 40.99], drag: [0.00613, 0.9469, 22.01], size: 1.5 },
  bicarbonate: { free: [0.000614, 0.9048, 21.14], drag: [-0.00503, 0.8957, 10.97], size: 0.1 },
  carbonate: { free: [-0.000326, 2.998, 64.03], drag: [-0.00181, 5.542, 120.2], size: 2.3 },
  sulfate: { free: [0.01037, 2.838, 82.37], drag: [0.03324, 5.889, 193.5], size: 2.6 },
  nitrate: { free: [0.001925, 1.214, 39.9], drag: [0.00118, 0.5045, 23.31], size: 0.1 },
  fluoride: { free: [0.002764, 1.087, 26.66], drag: [0.00178, 0.6202, 19.34], size: 0.5 },
};

const quadratic = ([curve, slope, rest]: readonly [number, number, number], celsius: number): number =>
  curve * celsius ** 2 + slope * celsius + rest;

const molarConductivity = (ion: IonName | 'hydrogen', celsius: number, ionicStrength: number): number => {
  const { free, drag, size } = carriers[ion];
  const root = Math.sqrt(ionicStrength);
  return quadratic(free, celsius) - (quadratic(drag, celsius) * root) / (1 + size * root);
};

const ionInputs = {
  calcium: { symbol: 'Ca', kind: 'equivalent-concentration' },
  magnesium: { symbol: 'Mg', kind: 'equivalent-concentration' },
  sodium: { symbol: 'Na', kind: 'equivalent-concentration' },
  potassium: { symbol: 'K', kind: 'equivalent-concentration' },
  ammonium: { symbol: 'NH₄', kind: 'equivalent-concentration' },
  iron: { symbol: 'Fe', kind: 'equivalent-concentration' },
  manganese: { symbol: 'Mn', kind: 'equivalent-concentration' },
  strontium: { symbol: 'Sr', kind: 'equivalent-concentration' },
  barium: { symbol: 'Ba', kind: 'equivalent-concentration' },
  bicarbonate: { symbol: 'HCO₃', kind: 'equivalent-concentration' },
  carbonate: { symbol: 'CO₃', kind: 'equivalent-concentration' },
  sulfate: { symbol: 'SO₄', kind: 'equivalent-concentration' },
  chloride: { symbol: 'Cl', kind: 'equivalent-concentration' },
  nitrate: { symbol: 'NO₃', kind: 'equivalent-concentration' },
  fluoride: { symbol: 'F', kind: 'equivalent-concentration' },
} as const;

type ConductivityInputs = IonEquivalents & { readonly temperature: number; readonly ph: number };

/** Hydrogen ions per volume from the pH, eq/m3; activity is taken as concentration. */
const hydrogenOf = (ph: number): number => 1000 * 10 ** -ph;

const check = (inputs: ConductivityInputs): void => {
  requirePositive('temperature', inputs.temperature);
  requireNotNegative('ph', inputs.ph);
  for (const ion of ionNames) requireNotNegative(ion, inputs[ion]);
};

const currents = (inputs: ConductivityInputs) => {
  check(inputs);
  const celsius = toCelsius(inputs.temperature);
  const hydrogen = hydrogenOf(inputs.ph);
  const free = freeIons(inputs, hydrogen);
  const paired: { readonly [Ion in IonName]?: number } = free;
  const carried = (ion: IonName | 'hydrogen', molality: number): number =>
    0.1 * molality * molarConductivity(ion, celsius, free.ionicStrength);
  const byIons = ionNames.reduce((sum, ion) => {
    const molality = paired[ion] ?? inputs[ion] / (1000 * Math.abs(ions[ion].charge));
    return sum + carried(ion, molality);
  }, 0);
  const byHydrogen = carried('hydrogen', hydrogen / 1000);
  return {
    conductivity: byIons + byHydrogen,
    hydrogenShare: byHydrogen / (byIons + byHydrogen),
    ionicStrength: 1000 * free.ionicStrength,
  };
};

/**
 * Electrical conductivity of a water from its ions.
 *
 * $$ \kappa = \sum_i \lambda_i m_i, \quad \lambda_i = \lambda_i^0(t) - \frac{A_i(t) \sqrt{I}}{1 + B_i \sqrt{I}} $$
 * over the free ions; λ⁰ and A are quadratic in t (°C). Calcium and magnesium pair with sulfate (the pair carries
 * nothing) and with bicarbonate (not counted, as in the source).
 *
 * Valid for ionic strength up to 1 mol/kg, pH 1 to 10, 0 to 95 °C. Ionic strength is given per m3.
 * Assumes: a litre of water is a kilogram; four of WATEQ4F's pairs with constants of 25 °C from memory, activities by
 * Davies. In acid rain the pH decides: 0.1 in pH moves a water of 50 µS/cm by a tenth.
 * Source: McCleskey, Nordstrom, Ryan & Ball (2012), Geochim. Cosmochim. Acta 77, 369. Status: coefficients at second hand.
 * Checked: checks/src/published/waters.ts. Error there: median 4 %; 20 of 21 waters up to 1 mol/kg within 12 %, an acid rain 19 %.
 * @throws RangeError on a negative concentration or a non-positive temperature.
 * @example
 * ```ts
 * waterConductivity.compute({
 *   calcium: 4, magnesium: 1, sodium: 1, potassium: 0, ammonium: 0, iron: 0, manganese: 0, strontium: 0, barium: 0,
 *   bicarbonate: 4, carbonate: 0, sulfate: 1, chloride: 1, nitrate: 0, fluoride: 0, ph: 7, temperature: 298.15,
 * }).conductivity // => 0.0570571
 * ```
 */
export const waterConductivity = equation(
  {
    key: 'water-conductivity',
    title: 'equation.water-conductivity',
    words: 'formula.water-conductivity',
    inputs: {
      ...ionInputs,
      ph: { symbol: 'pH', kind: 'ph' },
      temperature: { symbol: 'T', kind: 'temperature' },
    },
    outputs: {
      conductivity: { symbol: 'κ', kind: 'conductivity' },
      hydrogenShare: { symbol: 'x_H', kind: 'share' },
      ionicStrength: { symbol: 'I', kind: 'equivalent-concentration' },
    },
    range: [
      {
        of: 'symbol.ionic-strength',
        kind: 'equivalent-concentration',
        max: 1000,
        value: (_inputs, outputs) => outputs.ionicStrength,
      },
      inputWithin('ph', 'symbol.ph', 'ph', { min: 1, max: 10 }),
      inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 273.15, max: 368.15 }),
    ],
    source: 'mccleskey-2012',
    status: 'second-hand',
  },
  currents,
);

/**
 * A conductivity read at one temperature, as a meter without compensation would read it at another.
 *
 * $$ \kappa_2 = \kappa_1 \frac{1 + 0.0191\,(t_2 - 25)}{1 + 0.0191\,(t_1 - 25)} $$ with t in °C.
 *
 * Valid about 5 to 35 °C for natural waters.
 * Source: Standard Methods 2510 B. Status: memory.
 * @throws RangeError on a negative conductivity or a non-positive temperature.
 * @example
 * ```ts
 * conductivityAt.compute({ conductivity: 0.05, temperature: 293.15, otherTemperature: 298.15 }).otherConductivity // => 0.0552792
 * ```
 */
export const conductivityAt = equation(
  {
    key: 'conductivity-at',
    title: 'equation.conductivity-at',
    words: 'formula.conductivity-at',
    inputs: {
      conductivity: { symbol: 'κ₁', kind: 'conductivity' },
      temperature: { symbol: 'T₁', kind: 'temperature' },
      otherTemperature: { symbol: 'T₂', kind: 'temperature' },
    },
    outputs: { otherConductivity: { symbol: 'κ₂', kind: 'conductivity' } },
    range: [
      inputWithin('temperature', 'symbol.temperature', 'temperature', { min: 278.15, max: 308.15 }),
      inputWithin('otherTemperature', 'symbol.other-temperature', 'temperature', {
        min: 278.15,
        max: 308.15,
      }),
    ],
    source: 'standard-methods-2510',
    status: 'memory',
  },
  ({ conductivity, temperature, otherTemperature }) => {
    requireNotNegative('conductivity', conductivity);
    requirePositive('temperature', temperature);
    requirePositive('otherTemperature', otherTemperature);
    const factor = (kelvin: number): number => 1 + 0.0191 * (toCelsius(kelvin) - 25);
    return { otherConductivity: (conductivity * factor(otherTemperature)) / factor(temperature) };
  },
);
