import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';

/**
 * Water that a rinse of so many bed volumes takes.
 *
 * $$ V_r = n\,V $$
 *
 * Slow rinse: at least 1 bed volume, 1.5 aimed; fast rinse 2 (common practice).
 * Source: definition. Checked: checks/src/published/softening.ts (S15).
 * @throws RangeError on a negative count or a non-positive volume.
 * @example
 * ```ts
 * rinseVolume.compute({ bedVolumes: 1.5, resinVolume: 0.0566 }).rinseVolume // => 0.0849
 * ```
 */
export const rinseVolume = equation(
  {
    key: 'rinse-volume',
    title: 'equation.rinse-volume',
    words: 'formula.rinse-volume',
    inputs: {
      bedVolumes: { symbol: 'n', kind: 'bed-volumes' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: { rinseVolume: { symbol: 'V_r', kind: 'volume' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ bedVolumes, resinVolume }) => {
    requireNotNegative('bedVolumes', bedVolumes);
    requirePositive('resinVolume', resinVolume);
    return { rinseVolume: bedVolumes * resinVolume };
  },
);

/**
 * How long a rinse of so many bed volumes takes, slow or fast.
 *
 * $$ t = n\,V / Q $$ The slow rinse runs at the motive flow alone.
 *
 * Valid while the flow holds. UFC 3-240-13FN: displacement 1.0 to 3.0 bed volumes.
 * Source: definition. Checked: checks/src/published/softening.ts (S12, S14, S15).
 * @throws RangeError on a negative count or a non-positive volume or flow.
 * @example
 * ```ts
 * rinseTime.compute({ bedVolumes: 1, resinVolume: 0.0566, rinseFlow: 4.416e-5 }).rinseTime // => 1281.70
 * ```
 */
export const rinseTime = equation(
  {
    key: 'rinse-time',
    title: 'equation.rinse-time',
    words: 'formula.rinse-time',
    inputs: {
      bedVolumes: { symbol: 'n', kind: 'bed-volumes' },
      resinVolume: { symbol: 'V', kind: 'volume' },
      rinseFlow: { symbol: 'Q', kind: 'flow' },
    },
    outputs: { rinseTime: { symbol: 't', kind: 'time' } },
    range: [inputWithin('bedVolumes', 'symbol.bed-volumes', 'bed-volumes', { min: 1 })],
    source: 'definition',
    status: 'seen',
  },
  ({ bedVolumes, resinVolume, rinseFlow }) => {
    requireNotNegative('bedVolumes', bedVolumes);
    requirePositive('resinVolume', resinVolume);
    requirePositive('rinseFlow', rinseFlow);
    return { rinseTime: (bedVolumes * resinVolume) / rinseFlow };
  },
);
