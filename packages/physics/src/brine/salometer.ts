import { requireNotNegative } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { inputWithin } from '../meta/input-within.ts';

/** Mass fraction of brine saturated at 60 °F, 100 salometer degrees. A canning scale with 25 % also exists; not used. */
const saturationAt60F = 0.26395;

/**
 * Mass fraction of a brine that a salometer reads.
 *
 * $$ w = 0.26395\,S $$ with S = degrees / 100.
 *
 * Valid 0 to 100 degrees at 60 °F.
 * Source: Hilderbrand (1999), Oregon State University Extension ORESU-H-99-002. Status: seen.
 * Checked: checks/src/published/brine.ts.
 * @throws RangeError on a negative or non-finite reading.
 * @example
 * ```ts
 * salometerBrine.compute({ salometer: 0.5 }).massFraction // => 0.131975
 * ```
 */
export const salometerBrine = equation(
  {
    key: 'salometer-brine',
    title: 'equation.salometer-brine',
    words: 'formula.salometer-brine',
    inputs: { salometer: { symbol: 'S', kind: 'salometer' } },
    outputs: { massFraction: { symbol: 'w', kind: 'mass-fraction' } },
    range: [inputWithin('salometer', 'symbol.salometer', 'salometer', { min: 0, max: 1 })],
    source: 'hilderbrand-1999',
    status: 'seen',
  },
  ({ salometer }) => {
    requireNotNegative('salometer', salometer);
    return { massFraction: saturationAt60F * salometer };
  },
);

/**
 * What a salometer reads in a brine.
 *
 * $$ S = w / 0.26395 $$
 *
 * Valid 0 to 26.395 % at 60 °F.
 * Source: Hilderbrand (1999), Oregon State University Extension ORESU-H-99-002. Status: seen.
 * Checked: checks/src/published/brine.ts.
 * @throws RangeError on a negative or non-finite mass fraction.
 * @example
 * ```ts
 * salometerReading.compute({ massFraction: 0.1 }).salometer // => 0.378859633
 * ```
 */
export const salometerReading = equation(
  {
    key: 'salometer-reading',
    title: 'equation.salometer-reading',
    words: 'formula.salometer-reading',
    inputs: { massFraction: { symbol: 'w', kind: 'mass-fraction' } },
    outputs: { salometer: { symbol: 'S', kind: 'salometer' } },
    range: [
      inputWithin('massFraction', 'symbol.mass-fraction', 'mass-fraction', { min: 0, max: saturationAt60F }),
    ],
    source: 'hilderbrand-1999',
    status: 'seen',
  },
  ({ massFraction }) => {
    requireNotNegative('massFraction', massFraction);
    return { salometer: massFraction / saturationAt60F };
  },
);
