import { stepVolume } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import type { ProgramAdvice } from './program-advice.ts';
import { rules } from './rules.ts';
import { type Timed, timedSettings } from './timed-settings.ts';

const secondsPerDay = 86_400;

/** A filter has backwash and rinse only; how often follows the calendar until its pressure loss is measured. */
export const putFilterProgram = (s: Situation, ledger: Ledger): Timed & Pick<ProgramAdvice, 'days'> => {
  ledger.assume('program.backwash.time', rules.backwash, 'common-practice');
  ledger.assume('program.fast-rinse.time', rules.filterRinse, 'common-practice');
  const timed = timedSettings(s, ledger);
  putFilterWater(ledger);
  ledger.assume(
    'program.days.limit',
    quantity('time', rules.calendar.filter * secondsPerDay),
    'common-practice',
  );
  ledger.choose(
    'program.set.days',
    quantity('time', rules.calendar.filter * secondsPerDay),
    'calendar',
    { limit: 'program.days.limit' },
    { source: 'common-practice' },
  );
  return {
    settings: timed.settings,
    notes: [...timed.notes, ...ripening()],
    days: { set: 'program.set.days', limit: 'program.days.limit' },
  };
};

const putFilterWater = (ledger: Ledger): void => {
  for (const step of ['backwash', 'fast-rinse'] as const) {
    ledger.derive(
      stepVolume,
      { stepFlow: `situation.rate.${step}`, stepTime: `program.set.${step}` },
      { stepVolume: `program.as-set.water.${step}` },
    );
  }
};

const ripening = (): readonly Message[] => [message('program.filter-interval')];
