import { molarMass } from '../ions/molar-masses.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/** Mass of common salt with the charge of one mass of potassium chloride: 58.443/74.551. */
export const potassiumEquivalence = molarMass.sodiumChloride / molarMass.potassiumChloride;

/**
 * Dose of common salt that carries the same charge as a dose of another chloride.
 *
 * $$ d' = d\,\kappa, \quad \kappa = M_{NaCl}/M_{KCl} = 0.784 $$
 *
 * Assumes: potassium regenerates as well as sodium, equivalent for equivalent (ours; it holds a little more firmly).
 * Source: molar masses. Checked: potassium.test.ts.
 * @throws RangeError on a negative dose or an equivalence that is not positive.
 * @example
 * ```ts
 * equivalentDose.compute({ saltDose: 128.15, saltEquivalence: 0.78393 }).equivalentDose // => 100.4606
 * ```
 */
export const equivalentDose = equation(
  {
    key: 'equivalent-dose',
    title: 'equation.equivalent-dose',
    words: 'formula.equivalent-dose',
    inputs: {
      saltDose: { symbol: 'd', kind: 'salt-dose' },
      saltEquivalence: { symbol: 'κ', kind: 'ratio' },
    },
    outputs: { equivalentDose: { symbol: 'd′', kind: 'salt-dose' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ saltDose, saltEquivalence }) => {
    requireNotNegative('saltDose', saltDose);
    requirePositive('saltEquivalence', saltEquivalence);
    return { equivalentDose: saltDose * saltEquivalence };
  },
);

/**
 * Dose of another chloride that carries the charge of a dose of common salt: `equivalentDose` read the other way.
 *
 * $$ d = d'/\kappa $$
 *
 * Source: molar masses. Checked: potassium.test.ts.
 * @throws RangeError on a negative dose or an equivalence that is not positive.
 * @example
 * ```ts
 * potassiumDose.compute({ equivalentDose: 100.4606, saltEquivalence: 0.78393 }).saltDose // => 128.15
 * ```
 */
export const potassiumDose = equation(
  {
    key: 'potassium-dose',
    title: 'equation.potassium-dose',
    words: 'formula.potassium-dose',
    inputs: {
      equivalentDose: { symbol: 'd′', kind: 'salt-dose' },
      saltEquivalence: { symbol: 'κ', kind: 'ratio' },
    },
    outputs: { saltDose: { symbol: 'd', kind: 'salt-dose' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ equivalentDose: counted, saltEquivalence }) => {
    requireNotNegative('equivalentDose', counted);
    requirePositive('saltEquivalence', saltEquivalence);
    return { saltDose: counted / saltEquivalence };
  },
);
