import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { circle } from './circle.ts';

/**
 * Inside diameter of a tank from a tape round it.
 *
 * $$ D = U/\pi - 2t $$
 *
 * Assumes: round, one wall all round. Source: geometry. Checked: tank.test.ts.
 * @throws RangeError on a non-finite or non-positive argument, or a wall that leaves no inside.
 * @example
 * ```ts
 * insideDiameter.compute({ girth: 1.2776, wallThickness: 0.00635 }).diameter // => 0.39397
 * ```
 */
export const insideDiameter = equation(
  {
    key: 'inside-diameter',
    title: 'equation.inside-diameter',
    words: 'formula.inside-diameter',
    inputs: {
      girth: { symbol: 'U', kind: 'length' },
      wallThickness: { symbol: 't', kind: 'length' },
    },
    outputs: { diameter: { symbol: 'D', kind: 'length' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ girth, wallThickness }) => {
    requirePositive('girth', girth);
    requireNotNegative('wallThickness', wallThickness);
    const diameter = girth / Math.PI - 2 * wallThickness;
    requirePositive('girth less wall', diameter);
    return { diameter };
  },
);

/**
 * Cross-section of a round tank.
 *
 * $$ A = \pi D^2/4 $$
 *
 * Source: geometry. Checked: tank.test.ts.
 * @throws RangeError on a diameter that is not positive.
 * @example
 * ```ts
 * crossSection.compute({ diameter: 0.4 }).area // => 0.125664
 * ```
 */
export const crossSection = equation(
  {
    key: 'cross-section',
    title: 'equation.cross-section',
    words: 'formula.cross-section',
    inputs: { diameter: { symbol: 'D', kind: 'length' } },
    outputs: { area: { symbol: 'A', kind: 'area' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ diameter }) => {
    requirePositive('diameter', diameter);
    return { area: circle(diameter) };
  },
);

/**
 * Volume of a settled bed in a round tank.
 *
 * $$ V = \pi D^2 L/4 $$
 *
 * Assumes: a level bed on a level floor; the rounded bottom is counted by whoever measures the depth.
 * Source: geometry. Checked: tank.test.ts.
 * @throws RangeError on a diameter that is not positive or a negative depth.
 * @example
 * ```ts
 * bedVolume.compute({ diameter: 0.4, bedDepth: 0.9 }).volume // => 0.113097
 * ```
 */
export const bedVolume = equation(
  {
    key: 'bed-volume',
    title: 'equation.bed-volume',
    words: 'formula.bed-volume',
    inputs: {
      diameter: { symbol: 'D', kind: 'length' },
      bedDepth: { symbol: 'L', kind: 'length' },
    },
    outputs: { volume: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ diameter, bedDepth }) => {
    requirePositive('diameter', diameter);
    requireNotNegative('bedDepth', bedDepth);
    return { volume: circle(diameter) * bedDepth };
  },
);

/**
 * Volume of a round tank with a flat floor, such as a brine tank.
 *
 * $$ V = \pi D^2 H/4 $$
 *
 * Assumes: straight walls, nothing for domes, wells or floors. Source: geometry. Checked: tank.test.ts.
 * @throws RangeError on a diameter that is not positive or a negative height.
 * @example
 * ```ts
 * tankVolume.compute({ diameter: 0.4, height: 1.5 }).volume // => 0.188496
 * ```
 */
export const tankVolume = equation(
  {
    key: 'tank-volume',
    title: 'equation.tank-volume',
    words: 'formula.tank-volume',
    inputs: {
      diameter: { symbol: 'D', kind: 'length' },
      height: { symbol: 'H', kind: 'length' },
    },
    outputs: { volume: { symbol: 'V', kind: 'volume' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ diameter, height }) => {
    requirePositive('diameter', diameter);
    requireNotNegative('height', height);
    return { volume: circle(diameter) * height };
  },
);

/**
 * Height above a settled bed that it may rise into.
 *
 * $$ F = H - L $$
 *
 * Negative where the bed is said to stand higher than the vessel: the caller's measurements disagree.
 * Source: geometry. Checked: tank.test.ts.
 * @throws RangeError on a negative or non-finite argument.
 * @example
 * ```ts
 * freeHeight.compute({ vesselHeight: 1.4, bedDepth: 0.9 }).freeHeight // => 0.5
 * ```
 */
export const freeHeight = equation(
  {
    key: 'free-height',
    title: 'equation.free-height',
    words: 'formula.free-height',
    inputs: {
      vesselHeight: { symbol: 'H', kind: 'length' },
      bedDepth: { symbol: 'L', kind: 'length' },
    },
    outputs: { freeHeight: { symbol: 'F', kind: 'length' } },
    range: [],
    source: 'geometry',
    status: 'seen',
  },
  ({ vesselHeight, bedDepth }) => {
    requireNotNegative('vesselHeight', vesselHeight);
    requireNotNegative('bedDepth', bedDepth);
    return { freeHeight: vesselHeight - bedDepth };
  },
);

/**
 * Flow per cross-section of a round tank: the rate that lifts a bed.
 *
 * $$ v = 4Q/(\pi D^2) $$
 *
 * Source: by definition. Checked: tank.test.ts.
 * @throws RangeError on a negative flow or a diameter that is not positive.
 * @example
 * ```ts
 * upflowRate.compute({ flow: 3e-4, diameter: 0.4 }).superficialVelocity // => 0.00238732
 * ```
 */
export const upflowRate = equation(
  {
    key: 'upflow-rate',
    title: 'equation.upflow-rate',
    words: 'formula.upflow-rate',
    inputs: {
      flow: { symbol: 'Q', kind: 'flow' },
      diameter: { symbol: 'D', kind: 'length' },
    },
    outputs: { superficialVelocity: { symbol: 'v', kind: 'superficial-velocity' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ flow, diameter }) => {
    requireNotNegative('flow', flow);
    requirePositive('diameter', diameter);
    return { superficialVelocity: flow / circle(diameter) };
  },
);
