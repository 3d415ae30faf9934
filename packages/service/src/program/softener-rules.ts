import {
  compensatedHardness,
  potassiumChlorideSolubility,
  potassiumEquivalence,
  saltPerWater,
  saltSolubility,
  sodiumAdded,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { rules } from './rules.ts';

/** The handbook's decisions as figures, so that each is shown with its mark and can be opened. */
export const putRules = (ledger: Ledger): void => {
  ledger.assume('program.rule.iron-factor', rules.ironFactor, 'common-practice');
  ledger.assume('program.rule.manganese-factor', rules.manganeseFactor, 'common-practice');
  ledger.assume('program.rule.yearly-loss', rules.yearlyLoss, 'ufc-3-240-13fn');
  ledger.assume('program.rule.remaining-hardness', quantity('hardness', 0), 'ours');
  ledger.assume('program.rule.slow-rinse', rules.slowRinse.aim, 'common-practice');
  ledger.assume('program.rule.fast-rinse', rules.fastRinse, 'common-practice');
  ledger.assume('program.backwash.time', rules.backwash, 'common-practice');
};

/** What the bed really sees, iron and manganese counted, and the sodium that softening adds. */
export const putHardness = (ledger: Ledger): void => {
  ledger.derive(
    compensatedHardness,
    {
      hardness: 'situation.hardness',
      iron: 'situation.water.iron',
      manganese: 'situation.water.manganese',
      ironFactor: 'program.rule.iron-factor',
      manganeseFactor: 'program.rule.manganese-factor',
    },
    { compensatedHardness: 'program.hardness' },
  );
  ledger.derive(sodiumAdded, { hardness: 'situation.hardness' }, { sodiumAdded: 'program.sodium' });
};

/** Potassium chloride counts by its equivalents; common salt needs no such figure. */
export const putSalt = (s: Situation, ledger: Ledger): void => {
  if (s.subject.salt !== 'potassium') return;
  ledger.assume('program.rule.salt-equivalence', quantity('ratio', potassiumEquivalence), 'definition');
};

/** Salt that one volume of refill water takes up in this brine tank. */
export const putBrine = (s: Situation, ledger: Ledger): void => {
  const solubility = s.subject.salt === 'potassium' ? potassiumChlorideSolubility : saltSolubility;
  ledger.derive(
    solubility,
    { temperature: 'situation.brine.temperature' },
    { massFraction: 'program.brine.saturation' },
  );
  ledger.derive(
    saltPerWater,
    { temperature: 'situation.brine.temperature', massFraction: 'program.brine.saturation' },
    { saltPerWater: 'program.brine.salt-per-water' },
  );
};
