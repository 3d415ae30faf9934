import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Water that a step of the cycle sends to drain, backwash for one.
 *
 * $$ V = Q\,t $$
 *
 * Valid while the flow holds. Source: definition.
 * @throws RangeError on a negative flow or time.
 * @example
 * ```ts
 * stepVolume.compute({ stepFlow: 3e-4, stepTime: 600 }).stepVolume // => 0.18
 * ```
 */
export const stepVolume = equation(
  {
    key: 'step-volume',
    title: 'equation.step-volume',
    words: 'formula.step-volume',
    inputs: {
      stepFlow: { symbol: 'Q', kind: 'flow' },
      stepTime: { symbol: 't', kind: 'time' },
    },
    outputs: { stepVolume: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ stepFlow, stepTime }) => {
    requireNotNegative('stepFlow', stepFlow);
    requireNotNegative('stepTime', stepTime);
    return { stepVolume: stepFlow * stepTime };
  },
);

/**
 * Water that one regeneration takes from the supply.
 *
 * $$ V = V_{backwash} + V_{motive} + V_{slow} + V_{fast} + V_{refill} $$ with the motive water of the draw; the brine itself
 * is counted once, as refill water.
 *
 * Valid for a cycle of these steps. Source: conservation of mass.
 * @throws RangeError on a negative volume.
 * @example
 * ```ts
 * regenerationWater.compute({ backwashWater: 0.18, motiveWater: 0.03, slowRinseWater: 0.06, fastRinseWater: 0.11, refillWater: 0.02 }).regenerationWater // => 0.4
 * ```
 */
export const regenerationWater = equation(
  {
    key: 'regeneration-water',
    title: 'equation.regeneration-water',
    words: 'formula.regeneration-water',
    inputs: {
      backwashWater: { symbol: 'V_bw', kind: 'volume' },
      motiveWater: { symbol: 'V_m', kind: 'volume' },
      slowRinseWater: { symbol: 'V_sr', kind: 'volume' },
      fastRinseWater: { symbol: 'V_fr', kind: 'volume' },
      refillWater: { symbol: 'V_w', kind: 'volume' },
    },
    outputs: { regenerationWater: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ backwashWater, motiveWater, slowRinseWater, fastRinseWater, refillWater }) => {
    const parts = { backwashWater, motiveWater, slowRinseWater, fastRinseWater, refillWater };
    for (const [name, value] of Object.entries(parts)) requireNotNegative(name, value);
    return {
      regenerationWater: backwashWater + motiveWater + slowRinseWater + fastRinseWater + refillWater,
    };
  },
);

/**
 * How long the outlet is without soft water.
 *
 * $$ t = t_{backwash} + t_{draw} + t_{slow} + t_{fast} $$
 *
 * Valid for refill in service or added by the caller.
 * Source: Davis (2010), equation 8-23. Checked: checks/src/published/softening.ts (S16).
 * @throws RangeError on a negative time.
 * @example
 * ```ts
 * regenerationTime.compute({ backwashTime: 600, drawTime: 720, slowRinseTime: 1280, fastRinseTime: 400 }).regenerationTime // => 3000
 * ```
 */
export const regenerationTime = equation(
  {
    key: 'regeneration-time',
    title: 'equation.regeneration-time',
    words: 'formula.regeneration-time',
    inputs: {
      backwashTime: { symbol: 't_bw', kind: 'time' },
      drawTime: { symbol: 't_d', kind: 'time' },
      slowRinseTime: { symbol: 't_sr', kind: 'time' },
      fastRinseTime: { symbol: 't_fr', kind: 'time' },
    },
    outputs: { regenerationTime: { symbol: 't', kind: 'time' } },
    range: [],
    source: 'davis-2010-softening',
    status: 'seen',
  },
  ({ backwashTime, drawTime, slowRinseTime, fastRinseTime }) => {
    const parts = { backwashTime, drawTime, slowRinseTime, fastRinseTime };
    for (const [name, value] of Object.entries(parts)) requireNotNegative(name, value);
    return { regenerationTime: backwashTime + drawTime + slowRinseTime + fastRinseTime };
  },
);
