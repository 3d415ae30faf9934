import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';

/**
 * A vessel for a flow and a bed: area from the loading rate, depth from the resin.
 *
 * $$ A = Q / v, \quad D = \sqrt{4 A / \pi}, \quad h = V / A $$
 *
 * Valid for a single round vessel; depth to diameter 0.2 to 3 (Davis 2010, p. 8-20, after GLUMRB 2003).
 * Source: Davis (2010), example 8-4. Status: seen. Checked: checks/src/published/softening.ts (S5).
 * @throws RangeError on a non-positive argument.
 * @example
 * ```ts
 * bedSize.compute({ serviceFlow: 0.003183, loadingRate: 0.004722, resinVolume: 0.94 }).diameter // => 0.926425
 * ```
 */
export const bedSize = equation(
  {
    key: 'bed-size',
    title: 'equation.bed-size',
    words: 'formula.bed-size',
    inputs: {
      serviceFlow: { symbol: 'Q', kind: 'flow' },
      loadingRate: { symbol: 'v', kind: 'superficial-velocity' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: {
      area: { symbol: 'A', kind: 'area' },
      diameter: { symbol: 'D', kind: 'length' },
      depth: { symbol: 'h', kind: 'length' },
      depthToDiameter: { symbol: 'h/D', kind: 'ratio' },
    },
    range: [
      {
        of: 'symbol.depth-to-diameter',
        kind: 'ratio',
        min: 0.2,
        max: 3,
        value: (_inputs, outputs) => outputs.depthToDiameter,
      },
    ],
    source: 'davis-2010-softening',
    status: 'seen',
  },
  ({ serviceFlow, loadingRate, resinVolume }) => {
    requirePositive('serviceFlow', serviceFlow);
    requirePositive('loadingRate', loadingRate);
    requirePositive('resinVolume', resinVolume);
    const area = serviceFlow / loadingRate;
    const diameter = Math.sqrt((4 * area) / Math.PI);
    const depth = resinVolume / area;
    return { area, diameter, depth, depthToDiameter: depth / diameter };
  },
);

/**
 * Dry mass of resin from its volume as delivered.
 *
 * $$ m = V\,\rho\,(1 - f) $$ with ρ the moist bulk density and f the moisture.
 *
 * Valid for moisture between 0 and 1; gel resin 44 to 48 %.
 * Source: Davis (2010), example 8-2. Status: seen. Checked: checks/src/published/softening.ts (S3).
 * @throws RangeError on a non-positive volume or density or a moisture outside 0 to 1.
 * @example
 * ```ts
 * dryResin.compute({ resinVolume: 0.006627, moistDensity: 850, moisture: 0.44 }).dryMass // => 3.154452
 * ```
 */
export const dryResin = equation(
  {
    key: 'dry-resin',
    title: 'equation.dry-resin',
    words: 'formula.dry-resin',
    inputs: {
      resinVolume: { symbol: 'V', kind: 'volume' },
      moistDensity: { symbol: 'ρ', kind: 'density' },
      moisture: { symbol: 'f', kind: 'share' },
    },
    outputs: { dryMass: { symbol: 'm', kind: 'mass' } },
    range: [inputWithin('moisture', 'symbol.moisture', 'share', { min: 0, max: 1 })],
    source: 'davis-2010-softening',
    status: 'seen',
  },
  ({ resinVolume, moistDensity, moisture }) => {
    requirePositive('resinVolume', resinVolume);
    requirePositive('moistDensity', moistDensity);
    requirePositive('1 - moisture', 1 - moisture);
    return { dryMass: resinVolume * moistDensity * (1 - moisture) };
  },
);
