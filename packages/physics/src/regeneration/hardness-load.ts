import { molarMass } from '../ions/molar-masses.ts';
import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Hardness as the program reckons it: iron and manganese take more of the bed than their charge.
 *
 * $$ H' = H + a\,c_{Fe} + b\,c_{Mn} $$ with a and b in equivalents per mass of metal (1 mg/L counted as 4 grains per US
 * gallon is 1368.26 eq/kg).
 *
 * Valid for dissolved iron and manganese up to about 10 mg/L (NDSU Extension WQ1031: softeners take up to 10 ppm).
 * Source: common practice, no source; public pages count 2 to 5 grains.
 * @throws RangeError on a negative or non-finite argument.
 * @example
 * ```ts
 * compensatedHardness.compute({ hardness: 6, iron: 0.001, manganese: 0, ironFactor: 1368.26, manganeseFactor: 684.13 }).compensatedHardness // => 7.36826
 * ```
 */
export const compensatedHardness = equation(
  {
    key: 'compensated-hardness',
    title: 'equation.compensated-hardness',
    words: 'formula.compensated-hardness',
    inputs: {
      hardness: { symbol: 'H', kind: 'hardness' },
      iron: { symbol: 'Fe', kind: 'concentration' },
      manganese: { symbol: 'Mn', kind: 'concentration' },
      ironFactor: { symbol: 'a', kind: 'hardness-per-metal' },
      manganeseFactor: { symbol: 'b', kind: 'hardness-per-metal' },
    },
    outputs: { compensatedHardness: { symbol: 'H′', kind: 'hardness' } },
    range: [
      {
        of: 'symbol.iron-and-manganese',
        kind: 'concentration',
        max: 0.01,
        value: ({ iron, manganese }) => iron + manganese,
      },
    ],
    source: 'common-practice',
    status: 'common-practice',
  },
  ({ hardness, iron, manganese, ironFactor, manganeseFactor }) => {
    const parts = { hardness, iron, manganese, ironFactor, manganeseFactor };
    for (const [name, value] of Object.entries(parts)) requireNotNegative(name, value);
    return { compensatedHardness: hardness + ironFactor * iron + manganeseFactor * manganese };
  },
);

/**
 * Sodium that softening puts into the water.
 *
 * $$ c_{Na} = H\,M_{Na} $$ (7.9 mg/L for each grain per US gallon)
 *
 * Valid for a sodium-form bed. Source: stoichiometry.
 * @throws RangeError on a negative hardness.
 * @example
 * ```ts
 * sodiumAdded.compute({ hardness: 0.342064 }).sodiumAdded // => 0.00786397
 * ```
 */
export const sodiumAdded = equation(
  {
    key: 'sodium-added',
    title: 'equation.sodium-added',
    words: 'formula.sodium-added',
    inputs: { hardness: { symbol: 'H', kind: 'hardness' } },
    outputs: { sodiumAdded: { symbol: 'Na', kind: 'concentration' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ hardness }) => {
    requireNotNegative('hardness', hardness);
    return { sodiumAdded: hardness * molarMass.sodium };
  },
);
