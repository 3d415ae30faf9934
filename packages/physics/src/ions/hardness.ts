import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { equivalentsOf } from './ions.ts';

/**
 * Hardness from calcium and magnesium.
 *
 * $$ H = \frac{2\,c_{Ca}}{M_{Ca}} + \frac{2\,c_{Mg}}{M_{Mg}} $$ with c as the ion itself; one equivalent is 50.043 g of CaCO3,
 * so that 1 mg/L of calcium is 2.497 mg/L and 1 mg/L of magnesium 4.118 mg/L as CaCO3.
 *
 * Valid for any water; strontium, iron and manganese are left out (`fullHardness` counts them).
 * Source: Standard Methods 2340 B, hardness by calculation. Status: second hand.
 * Checked: checks/src/published/softening.ts (S9), units.ts (U2), waters.ts.
 * @throws RangeError on a negative or non-finite concentration.
 * @example
 * ```ts
 * hardnessFromIons.compute({ calcium: 0.08, magnesium: 0.015 }).hardness // => 5.22653
 * ```
 */
export const hardnessFromIons = equation(
  {
    key: 'hardness-from-ions',
    title: 'equation.hardness-from-ions',
    words: 'formula.hardness-from-ions',
    inputs: {
      calcium: { symbol: 'Ca', kind: 'concentration' },
      magnesium: { symbol: 'Mg', kind: 'concentration' },
    },
    outputs: { hardness: { symbol: 'H', kind: 'hardness' } },
    range: [],
    source: 'standard-methods-2340',
    status: 'second-hand',
  },
  ({ calcium, magnesium }) => {
    requireNotNegative('calcium', calcium);
    requireNotNegative('magnesium', magnesium);
    return { hardness: equivalentsOf('calcium', calcium) + equivalentsOf('magnesium', magnesium) };
  },
);

/**
 * Hardness with strontium, which hard ground waters may hold.
 *
 * $$ H = \frac{2\,c_{Ca}}{M_{Ca}} + \frac{2\,c_{Mg}}{M_{Mg}} + \frac{2\,c_{Sr}}{M_{Sr}} $$
 *
 * Valid for any water; iron and manganese are counted by the program in its own way.
 * Source: definition, molar masses of IUPAC; Standard Methods 2340 B names strontium among the hardness ions.
 * @throws RangeError on a negative or non-finite concentration.
 * @example
 * ```ts
 * hardnessWithStrontium.compute({ calcium: 0.11, magnesium: 0.046, strontium: 0.041 }).hardness // => 10.2104
 * ```
 */
export const hardnessWithStrontium = equation(
  {
    key: 'hardness-with-strontium',
    title: 'equation.hardness-with-strontium',
    words: 'formula.hardness-with-strontium',
    inputs: {
      calcium: { symbol: 'Ca', kind: 'concentration' },
      magnesium: { symbol: 'Mg', kind: 'concentration' },
      strontium: { symbol: 'Sr', kind: 'concentration' },
    },
    outputs: { hardness: { symbol: 'H', kind: 'hardness' } },
    range: [],
    source: 'standard-methods-2340',
    status: 'second-hand',
  },
  ({ calcium, magnesium, strontium }) => {
    requireNotNegative('strontium', strontium);
    const { hardness } = hardnessFromIons.compute({ calcium, magnesium });
    return { hardness: hardness + equivalentsOf('strontium', strontium) };
  },
);

/**
 * Everything of two charges that a softener takes out: hardness with strontium, iron and manganese.
 *
 * $$ H = \sum_i \frac{2\,c_i}{M_i} $$
 *
 * Valid for any water; iron and manganese as dissolved, two charges each.
 * Source: definition, molar masses of IUPAC.
 * @throws RangeError on a negative or non-finite concentration.
 * @example
 * ```ts
 * fullHardness.compute({ calcium: 0.08, magnesium: 0.015, strontium: 0.001, iron: 0.001, manganese: 0.0001 }).hardness // => 5.28881
 * ```
 */
export const fullHardness = equation(
  {
    key: 'full-hardness',
    title: 'equation.full-hardness',
    words: 'formula.full-hardness',
    inputs: {
      calcium: { symbol: 'Ca', kind: 'concentration' },
      magnesium: { symbol: 'Mg', kind: 'concentration' },
      strontium: { symbol: 'Sr', kind: 'concentration' },
      iron: { symbol: 'Fe', kind: 'concentration' },
      manganese: { symbol: 'Mn', kind: 'concentration' },
    },
    outputs: { hardness: { symbol: 'H', kind: 'hardness' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ calcium, magnesium, strontium, iron, manganese }) => {
    const parts = { calcium, magnesium, strontium, iron, manganese };
    for (const [name, value] of Object.entries(parts)) requireNotNegative(name, value);
    return {
      hardness:
        equivalentsOf('calcium', calcium) +
        equivalentsOf('magnesium', magnesium) +
        equivalentsOf('strontium', strontium) +
        equivalentsOf('iron', iron) +
        equivalentsOf('manganese', manganese),
    };
  },
);
