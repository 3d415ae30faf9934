import { molarMass } from '../ions/molar-masses.ts';
import { requireNotNegative, requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';

/**
 * Salt for one regeneration.
 *
 * $$ m = d\,V $$
 *
 * Valid always. Source: definition of the dose. Checked: checks/src/published/softening.ts (S10, S12, S14).
 * @throws RangeError on a negative dose or a non-positive volume.
 * @example
 * ```ts
 * saltMass.compute({ saltDose: 128.148, resinVolume: 0.0566 }).saltMass // => 7.25318
 * ```
 */
export const saltMass = equation(
  {
    key: 'salt-mass',
    title: 'equation.salt-mass',
    words: 'formula.salt-mass',
    inputs: {
      saltDose: { symbol: 'd', kind: 'salt-dose' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: { saltMass: { symbol: 'm', kind: 'mass' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ saltDose, resinVolume }) => {
    requireNotNegative('saltDose', saltDose);
    requirePositive('resinVolume', resinVolume);
    return { saltMass: saltDose * resinVolume };
  },
);

/**
 * The dose that a mass of salt amounts to.
 *
 * $$ d = m / V $$
 *
 * Valid always. Source: definition. Checked: checks/src/published/softening.ts (S10).
 * @throws RangeError on a negative mass or a non-positive volume.
 * @example
 * ```ts
 * saltDose.compute({ saltMass: 7.25, resinVolume: 0.0566 }).saltDose // => 128.092
 * ```
 */
export const saltDose = equation(
  {
    key: 'salt-dose',
    title: 'equation.salt-dose',
    words: 'formula.salt-dose',
    inputs: {
      saltMass: { symbol: 'm', kind: 'mass' },
      resinVolume: { symbol: 'V', kind: 'volume' },
    },
    outputs: { saltDose: { symbol: 'd', kind: 'salt-dose' } },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ saltMass, resinVolume }) => {
    requireNotNegative('saltMass', saltMass);
    requirePositive('resinVolume', resinVolume);
    return { saltDose: saltMass / resinVolume };
  },
);

/**
 * Least salt that chemistry allows for an exchange: one sodium for each charge.
 *
 * $$ m_0 = X\,M_{NaCl} $$ (856.3 g of CaCO3 per kg of salt, 5994 grains per pound)
 *
 * Valid for sodium chloride; a real regeneration takes 1.5 to 3 times as much.
 * Source: stoichiometry. Checked: checks/src/published/units.ts.
 * @throws RangeError on a negative exchange.
 * @example
 * ```ts
 * theoreticalSalt.compute({ exchange: 50 }).saltMass // => 2.92215
 * ```
 */
export const theoreticalSalt = equation(
  {
    key: 'theoretical-salt',
    title: 'equation.theoretical-salt',
    words: 'formula.theoretical-salt',
    inputs: { exchange: { symbol: 'X', kind: 'exchange' } },
    outputs: { saltMass: { symbol: 'm₀', kind: 'mass' } },
    range: [],
    source: 'mass-balance',
    status: 'seen',
  },
  ({ exchange }) => {
    requireNotNegative('exchange', exchange);
    return { saltMass: exchange * molarMass.sodiumChloride };
  },
);

/**
 * Hardness removed per mass of salt, and what share of the possible that is.
 *
 * $$ \eta = X / m, \quad f = \eta\,M_{NaCl} $$
 *
 * Valid for sodium chloride.
 * Source: definition. Checked: checks/src/published/softening.ts (S10).
 * @throws RangeError on a negative exchange or a non-positive mass.
 * @example
 * ```ts
 * saltEfficiency.compute({ exchange: 50, saltMass: 5 }).saltEfficiency // => 10
 * ```
 */
export const saltEfficiency = equation(
  {
    key: 'salt-efficiency',
    title: 'equation.salt-efficiency',
    words: 'formula.salt-efficiency',
    inputs: {
      exchange: { symbol: 'X', kind: 'exchange' },
      saltMass: { symbol: 'm', kind: 'mass' },
    },
    outputs: {
      saltEfficiency: { symbol: 'η', kind: 'salt-efficiency' },
      fractionOfTheoretical: { symbol: 'f', kind: 'share' },
    },
    range: [],
    source: 'definition',
    status: 'seen',
  },
  ({ exchange, saltMass }) => {
    requireNotNegative('exchange', exchange);
    requirePositive('saltMass', saltMass);
    const efficiency = exchange / saltMass;
    return { saltEfficiency: efficiency, fractionOfTheoretical: efficiency * molarMass.sodiumChloride };
  },
);
