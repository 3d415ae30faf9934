import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { chalkPerEquivalent } from './molar-masses.ts';

/**
 * Dissolved solids estimated from the main ions: what would stay in the dish.
 *
 * $$ S = 0.6\,A + c_{Ca} + c_{Mg} + c_{Na} + c_K + c_{SO4} + c_{Cl} $$ with A the alkalinity as CaCO3: on drying,
 * bicarbonate leaves as carbonate.
 *
 * Valid for ordinary waters; nitrate, silica, iron and fluoride are left out.
 * Source: Standard Methods 1030 E, as used for checks/data/groundwater-ohio.csv. Status: second hand.
 * Checked: checks/src/published/waters.ts.
 * @throws RangeError on a negative or non-finite argument.
 * @example
 * ```ts
 * dissolvedSolids.compute({ alkalinity: 4, calcium: 0.08, magnesium: 0.012, sodium: 0.02, potassium: 0.002, sulfate: 0.05, chloride: 0.03 }).dissolvedSolids // => 0.314104
 * ```
 */
export const dissolvedSolids = equation(
  {
    key: 'dissolved-solids',
    title: 'equation.dissolved-solids',
    words: 'formula.dissolved-solids',
    inputs: {
      alkalinity: { symbol: 'A', kind: 'equivalent-concentration' },
      calcium: { symbol: 'Ca', kind: 'concentration' },
      magnesium: { symbol: 'Mg', kind: 'concentration' },
      sodium: { symbol: 'Na', kind: 'concentration' },
      potassium: { symbol: 'K', kind: 'concentration' },
      sulfate: { symbol: 'SO₄', kind: 'concentration' },
      chloride: { symbol: 'Cl', kind: 'concentration' },
    },
    outputs: { dissolvedSolids: { symbol: 'S', kind: 'concentration' } },
    range: [],
    source: 'standard-methods-1030',
    status: 'second-hand',
  },
  ({ alkalinity, calcium, magnesium, sodium, potassium, sulfate, chloride }) => {
    const parts = { alkalinity, calcium, magnesium, sodium, potassium, sulfate, chloride };
    for (const [name, value] of Object.entries(parts)) requireNotNegative(name, value);
    const asChalk = alkalinity * chalkPerEquivalent;
    return {
      dissolvedSolids: 0.6 * asChalk + calcium + magnesium + sodium + potassium + sulfate + chloride,
    };
  },
);
