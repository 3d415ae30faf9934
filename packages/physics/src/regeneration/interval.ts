import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Water that a bed softens between regenerations.
 *
 * $$ V = \frac{X}{H - H_0} $$ with H₀ the hardness left in the blended water (0 for full softening).
 *
 * Valid when the bed is regenerated each time to the exchange given.
 * Source: conservation of charge. Checked: checks/src/published/softening.ts (S18).
 * @throws RangeError on a negative exchange or when hardness is not above what is left.
 * @example
 * ```ts
 * volumeBetween.compute({ exchange: 52, hardness: 6.16, remainingHardness: 0 }).serviceVolume // => 8.44156
 * ```
 */
export const volumeBetween = equation(
  {
    key: 'volume-between',
    title: 'equation.volume-between',
    words: 'formula.volume-between',
    inputs: {
      exchange: { symbol: 'X', kind: 'exchange' },
      hardness: { symbol: 'H', kind: 'hardness' },
      remainingHardness: { symbol: 'H₀', kind: 'hardness' },
    },
    outputs: { serviceVolume: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ exchange, hardness, remainingHardness }) => {
    requireNotNegative('exchange', exchange);
    requireNotNegative('remainingHardness', remainingHardness);
    requirePositive('hardness - remainingHardness', hardness - remainingHardness);
    return { serviceVolume: exchange / (hardness - remainingHardness) };
  },
);

/**
 * Exchange that softening a volume of water asks for.
 *
 * $$ X = (H - H_0)\,V $$
 *
 * Valid always. Source: conservation of charge. Checked: checks/src/published/softening.ts (S6).
 * @throws RangeError on a negative volume or when hardness is below what is left.
 * @example
 * ```ts
 * exchangeNeeded.compute({ serviceVolume: 10, hardness: 6.16, remainingHardness: 0 }).exchange // => 61.6
 * ```
 */
export const exchangeNeeded = equation(
  {
    key: 'exchange-needed',
    title: 'equation.exchange-needed',
    words: 'formula.exchange-needed',
    inputs: {
      serviceVolume: { symbol: 'V', kind: 'volume' },
      hardness: { symbol: 'H', kind: 'hardness' },
      remainingHardness: { symbol: 'H₀', kind: 'hardness' },
    },
    outputs: { exchange: { symbol: 'X', kind: 'exchange' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ serviceVolume, hardness, remainingHardness }) => {
    requireNotNegative('serviceVolume', serviceVolume);
    requireNotNegative('remainingHardness', remainingHardness);
    requireNotNegative('hardness - remainingHardness', hardness - remainingHardness);
    return { exchange: serviceVolume * (hardness - remainingHardness) };
  },
);

/**
 * What the meter counts down from: the reserve is held back for the rest of the day.
 *
 * $$ V_t = \max(0,\; V - V_{reserve}) $$
 *
 * Valid always. Reserve of one average day: common practice.
 * Source: definition.
 * @throws RangeError on a negative volume.
 * @example
 * ```ts
 * volumeBeforeReserve.compute({ serviceVolume: 8.4, reserve: 1.9 }).meteredVolume // => 6.5
 * ```
 */
export const volumeBeforeReserve = equation(
  {
    key: 'volume-before-reserve',
    title: 'equation.volume-before-reserve',
    words: 'formula.volume-before-reserve',
    inputs: {
      serviceVolume: { symbol: 'V', kind: 'volume' },
      reserve: { symbol: 'V_r', kind: 'volume' },
    },
    outputs: { meteredVolume: { symbol: 'V_t', kind: 'volume' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ serviceVolume, reserve }) => {
    requireNotNegative('serviceVolume', serviceVolume);
    requireNotNegative('reserve', reserve);
    return { meteredVolume: Math.max(0, serviceVolume - reserve) };
  },
);

/**
 * Time between regenerations at an average use.
 *
 * $$ t = V / Q $$
 *
 * Valid for the average, not for a single day. Source: definition. Checked: checks/src/published/softening.ts (S18).
 * @throws RangeError on a negative volume or a non-positive use.
 * @example
 * ```ts
 * serviceTime.compute({ meteredVolume: 6.5, averageUse: 2.2e-5 }).serviceTime // => 295454.5
 * ```
 */
export const serviceTime = equation(
  {
    key: 'service-time',
    title: 'equation.service-time',
    words: 'formula.service-time',
    inputs: {
      meteredVolume: { symbol: 'V', kind: 'volume' },
      averageUse: { symbol: 'Q', kind: 'flow' },
    },
    outputs: { serviceTime: { symbol: 't', kind: 'time' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ meteredVolume, averageUse }) => {
    requireNotNegative('meteredVolume', meteredVolume);
    requirePositive('averageUse', averageUse);
    return { serviceTime: meteredVolume / averageUse };
  },
);
