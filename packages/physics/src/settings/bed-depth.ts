import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { circle } from '../vessel/circle.ts';

/**
 * Depth at which a known volume of bed stands in a round tank.
 *
 * $$ L = 4V/(\pi D^2) $$
 *
 * Source: geometry. Checked: settings.test.ts against `bedVolume`.
 * @throws RangeError on a diameter that is not positive or a negative volume.
 * @example
 * ```ts
 * bedDepth.compute({ volume: 0.0849505, diameter: 0.353 }).bedDepth // => 0.86801
 * ```
 */
export const bedDepth = equation(
  {
    key: 'bed-depth',
    title: 'equation.bed-depth',
    words: 'formula.bed-depth',
    inputs: { volume: { symbol: 'V', kind: 'volume' }, diameter: { symbol: 'D', kind: 'length' } },
    outputs: { bedDepth: { symbol: 'L', kind: 'length' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ volume, diameter }) => {
    requireNotNegative('volume', volume);
    requirePositive('diameter', diameter);
    return { bedDepth: volume / circle(diameter) };
  },
);

/**
 * The expansion at which a bed reaches its free height less a margin.
 *
 * $$ E = (F - m)/L $$
 *
 * Zero where the margin leaves nothing. Source: geometry; the margin is the caller's choice. Checked: settings.test.ts.
 * @throws RangeError on a bed depth that is not positive or a negative height.
 * @example
 * ```ts
 * expansionAtFreeHeight.compute({ freeHeight: 0.508, margin: 0.0508, bedDepth: 0.8636 }).expansion // => 0.52941
 * ```
 */
export const expansionAtFreeHeight = equation(
  {
    key: 'expansion-at-free-height',
    title: 'equation.expansion-at-free-height',
    words: 'formula.expansion-at-free-height',
    inputs: {
      freeHeight: { symbol: 'F', kind: 'length' },
      margin: { symbol: 'm', kind: 'length' },
      bedDepth: { symbol: 'L', kind: 'length' },
    },
    outputs: { expansion: { symbol: 'E', kind: 'share' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ freeHeight, margin, bedDepth: depth }) => {
    requireNotNegative('freeHeight', freeHeight);
    requireNotNegative('margin', margin);
    requirePositive('bedDepth', depth);
    return { expansion: Math.max(0, freeHeight - margin) / depth };
  },
);

/**
 * Flow that gives an upflow velocity in a tank.
 *
 * $$ Q = v A $$
 *
 * Source: definition of the superficial velocity. Checked: settings.test.ts against `upflowRate`.
 * @throws RangeError on a negative velocity or an area that is not positive.
 * @example
 * ```ts
 * flowForUpflow.compute({ superficialVelocity: 0.0034, area: 0.0979 }).flow // => 3.3286e-4
 * ```
 */
export const flowForUpflow = equation(
  {
    key: 'flow-for-upflow',
    title: 'equation.flow-for-upflow',
    words: 'formula.flow-for-upflow',
    inputs: {
      superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' },
      area: { symbol: 'A', kind: 'area' },
    },
    outputs: { flow: { symbol: 'Q', kind: 'flow' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ superficialVelocity, area }) => {
    requireNotNegative('superficialVelocity', superficialVelocity);
    requirePositive('area', area);
    return { flow: superficialVelocity * area };
  },
);
