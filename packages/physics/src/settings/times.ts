import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { day } from './calendar.ts';

/**
 * The one time a controller holds for draw and slow rinse together.
 *
 * $$ t = t_d + t_{sr} $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a negative time.
 * @example
 * ```ts
 * brineStepTime.compute({ drawTime: 1200, slowRinseTime: 1920 }).brineStepTime // => 3120
 * ```
 */
export const brineStepTime = equation(
  {
    key: 'brine-step-time',
    title: 'equation.brine-step-time',
    words: 'formula.brine-step-time',
    inputs: {
      drawTime: { symbol: 't_d', kind: 'time' },
      slowRinseTime: { symbol: 't_sr', kind: 'time' },
    },
    outputs: { brineStepTime: { symbol: 't', kind: 'time' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ drawTime, slowRinseTime }) => {
    requireNotNegative('drawTime', drawTime);
    requireNotNegative('slowRinseTime', slowRinseTime);
    return { brineStepTime: drawTime + slowRinseTime };
  },
);

/**
 * What is left of a brine step for rinsing once the draw has ended; nothing when the draw outlasts the step.
 *
 * $$ t_{sr} = \max(0, t - t_d) $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a negative time.
 * @example
 * ```ts
 * rinseLeft.compute({ brineStepTime: 3120, drawTime: 3600 }).slowRinseTime // => 0
 * ```
 */
export const rinseLeft = equation(
  {
    key: 'rinse-left',
    title: 'equation.rinse-left',
    words: 'formula.rinse-left',
    inputs: {
      brineStepTime: { symbol: 't', kind: 'time' },
      drawTime: { symbol: 't_d', kind: 'time' },
    },
    outputs: { slowRinseTime: { symbol: 't_sr', kind: 'time' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ brineStepTime: step, drawTime }) => {
    requireNotNegative('brineStepTime', step);
    requireNotNegative('drawTime', drawTime);
    return { slowRinseTime: Math.max(0, step - drawTime) };
  },
);

/**
 * Bed volumes that a flow sends through a bed in a time.
 *
 * $$ n = Q t / V $$
 *
 * Source: definition. Checked: settings.test.ts against `rinseTime`.
 * @throws RangeError on a negative flow or time, or a bed volume that is not positive.
 * @example
 * ```ts
 * bedVolumesThrough.compute({ rinseFlow: 5.3627e-5, rinseTime: 1920, resinVolume: 0.0849505 }).bedVolumes // => 1.21205
 * ```
 */
export const bedVolumesThrough = equation(
  {
    key: 'bed-volumes-through',
    title: 'equation.bed-volumes-through',
    words: 'formula.bed-volumes-through',
    inputs: {
      rinseFlow: { symbol: 'Q', kind: 'flow' },
      rinseTime: { symbol: 't', kind: 'time' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: { bedVolumes: { symbol: 'n', kind: 'bed-volumes' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ rinseFlow, rinseTime, resinVolume }) => {
    requireNotNegative('rinseFlow', rinseFlow);
    requireNotNegative('rinseTime', rinseTime);
    requirePositive('resinVolume', resinVolume);
    return { bedVolumes: (rinseFlow * rinseTime) / resinVolume };
  },
);

/**
 * Average flow of a day's use.
 *
 * $$ \bar Q = V_d / 86\,400 $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a negative volume.
 * @example
 * ```ts
 * averageUse.compute({ dailyUse: 2.64979 }).averageUse // => 3.06689e-5
 * ```
 */
export const averageUse = equation(
  {
    key: 'average-use',
    title: 'equation.average-use',
    words: 'formula.average-use',
    inputs: { dailyUse: { symbol: 'V_d', kind: 'volume' } },
    outputs: { averageUse: { symbol: 'Q̄', kind: 'flow' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ dailyUse }) => {
    requireNotNegative('dailyUse', dailyUse);
    return { averageUse: dailyUse / day };
  },
);

/**
 * Water used between two regenerations so many days apart.
 *
 * $$ V = V_d t / 86\,400 $$
 *
 * Source: definition. Checked: settings.test.ts.
 * @throws RangeError on a negative volume or time.
 * @example
 * ```ts
 * useOverTime.compute({ dailyUse: 2.5, serviceTime: 172800 }).serviceVolume // => 5
 * ```
 */
export const useOverTime = equation(
  {
    key: 'use-over-time',
    title: 'equation.use-over-time',
    words: 'formula.use-over-time',
    inputs: {
      dailyUse: { symbol: 'V_d', kind: 'volume' },
      serviceTime: { symbol: 't', kind: 'time' },
    },
    outputs: { serviceVolume: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ dailyUse, serviceTime }) => {
    requireNotNegative('dailyUse', dailyUse);
    requireNotNegative('serviceTime', serviceTime);
    return { serviceVolume: (dailyUse * serviceTime) / day };
  },
);
