import { straightBetween } from '../brine/interpolate.ts';
import { chalkPerEquivalent } from '../ions/molar-masses.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';
import { year } from '../settings/calendar.ts';

const poundPerCubicFoot = 0.45359237 / 0.3048 ** 3;
const kilograinPerCubicFoot = (1000 * 64.79891e-6) / 0.3048 ** 3 / chalkPerEquivalent;

/** The trade's pairs of dose (lb/ft3) and capacity (kgr/ft3). */
const tradePairs: readonly (readonly [number, number])[] = [
  [6, 20],
  [10, 24.5],
  [15, 30],
];

const curve: readonly (readonly [number, number])[] = tradePairs.map(([dose, capacity]) => [
  dose * poundPerCubicFoot,
  capacity * kilograinPerCubicFoot,
]);
const [lowest = [Number.NaN, Number.NaN]] = curve;
const highest = curve.at(-1) ?? [Number.NaN, Number.NaN];

/** A dose written as 6 or 15 lb/ft3 must not fall outside by the rounding of its conversion. */
const rounding = 1e-9;

/**
 * Capacity of softening resin from its salt dose, as the handbook has it.
 *
 * $$ q(d) $$ straight lines through 6 lb/ft3 20 kgr/ft3, 10 and 24.5, 15 and 30; proportional to the dose below, constant above.
 *
 * Valid 96.1 to 240.3 kg/m3 (6 to 15 lb/ft3); outside the value is extrapolated and `evaluate` says so.
 * Assumes co-current regeneration with common salt, resin in good order. Published pairs differ by 7 %.
 * Source: common practice, no source; the first pair equals the limit of two state rules (S10).
 * Checked: checks/src/published/softening.ts (S10).
 * @throws RangeError on a negative or non-finite dose.
 * @example
 * ```ts
 * capacityFromDose.compute({ saltDose: 128.1477 }).capacity // => 1017.43
 * ```
 */
export const capacityFromDose = equation(
  {
    key: 'capacity-from-dose',
    title: 'equation.capacity-from-dose',
    words: 'formula.capacity-from-dose',
    inputs: { saltDose: { symbol: 'd', kind: 'salt-dose' } },
    outputs: { capacity: { symbol: 'q', kind: 'capacity' } },
    range: [
      inputWithin('saltDose', 'symbol.salt-dose', 'salt-dose', {
        min: lowest[0] * (1 - rounding),
        max: highest[0] * (1 + rounding),
      }),
    ],
    source: 'common-practice',
    status: 'common-practice',
  },
  ({ saltDose }) => {
    requireNotNegative('saltDose', saltDose);
    if (saltDose <= lowest[0]) return { capacity: (lowest[1] * saltDose) / lowest[0] };
    return { capacity: saltDose >= highest[0] ? highest[1] : straightBetween(curve, saltDose) };
  },
);

/**
 * What years in service leave of a capacity.
 *
 * $$ q = q_0 (1 - l)^{a} $$ with a the age in years.
 *
 * Valid for ages up to about ten years (ours). That the loss compounds is ours.
 * Source: UFC 3-240-13FN (2005), 2-2.5.1.2: 5 % a year. Status: seen.
 * @throws RangeError on a negative age or capacity, or a loss outside 0 to 1.
 * @example
 * ```ts
 * agedCapacity.compute({ capacity: 1000, resinAge: 157788000, yearlyLoss: 0.05 }).agedCapacity // => 773.781
 * ```
 */
export const agedCapacity = equation(
  {
    key: 'aged-capacity',
    title: 'equation.aged-capacity',
    words: 'formula.aged-capacity',
    inputs: {
      capacity: { symbol: 'q₀', kind: 'capacity' },
      resinAge: { symbol: 'a', kind: 'time' },
      yearlyLoss: { symbol: 'l', kind: 'share' },
    },
    outputs: { agedCapacity: { symbol: 'q', kind: 'capacity' } },
    range: [inputWithin('resinAge', 'symbol.resin-age', 'time', { min: 0, max: 10 * year })],
    source: 'ufc-3-240-13fn',
    status: 'seen',
  },
  ({ capacity, resinAge, yearlyLoss }) => {
    requireNotNegative('capacity', capacity);
    requireNotNegative('resinAge', resinAge);
    requireNotNegative('yearlyLoss', yearlyLoss);
    if (yearlyLoss > 1) throw new RangeError(`yearlyLoss must not be above 1, got ${yearlyLoss}`);
    return { agedCapacity: capacity * (1 - yearlyLoss) ** (resinAge / year) };
  },
);

/**
 * What a whole bed can take up.
 *
 * $$ X = q\,V $$
 *
 * Valid always. Source: definition. Checked: checks/src/published/softening.ts (S10, S18).
 * @throws RangeError on a negative capacity or a non-positive volume.
 * @example
 * ```ts
 * bedExchange.compute({ capacity: 914.5, resinVolume: 0.283 }).exchange // => 258.8035
 * ```
 */
export const bedExchange = equation(
  {
    key: 'bed-exchange',
    title: 'equation.bed-exchange',
    words: 'formula.bed-exchange',
    inputs: {
      capacity: { symbol: 'q', kind: 'capacity' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: { exchange: { symbol: 'X', kind: 'exchange' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ capacity, resinVolume }) => {
    requireNotNegative('capacity', capacity);
    requirePositive('resinVolume', resinVolume);
    return { exchange: capacity * resinVolume };
  },
);
