import { filterWater, stepVolume } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import type { ProgramAdvice } from './program-advice.ts';
import { rateOf } from './rates.ts';
import { rules } from './rules.ts';
import { wholeDays } from './softener-program.ts';
import { type Timed, timedSettings } from './timed-settings.ts';

const secondsPerDay = 86_400;

/** A filter has backwash and rinse only; how often follows the calendar until its pressure loss is measured. */
export const putFilterProgram = (s: Situation, ledger: Ledger): Timed & Pick<ProgramAdvice, 'days'> => {
  ledger.assume('program.backwash.time', rules.backwash, 'common-practice');
  ledger.assume('program.fast-rinse.time', rules.filterRinse, 'common-practice');
  const timed = timedSettings(s, ledger);
  putNoSalt(ledger);
  putCycle(ledger, 'program.as-set', 'program.set.backwash', 'program.set.fast-rinse');
  if (s.found.backwash !== undefined && s.found['fast-rinse'] !== undefined)
    putCycle(ledger, 'program.found', 'program.found.backwash', 'program.found.fast-rinse');
  return { settings: timed.settings, notes: [...timed.notes, ...byCalendar()], days: putDays(s, ledger) };
};

/** A filter uses none; the yearly lines are those of a softener. */
const putNoSalt = (ledger: Ledger): void => {
  for (const at of ['program.as-set', 'program.found'])
    ledger.define(`${at}.salt`, quantity('mass', 0), 'filter');
};

const putCycle = (ledger: Ledger, at: string, backwash: FigureId, rinse: FigureId): void => {
  const steps = [
    ['backwash', backwash],
    ['fast-rinse', rinse],
  ] as const;
  for (const [step, stepTime] of steps)
    ledger.derive(
      stepVolume,
      { stepFlow: rateOf(ledger, at, step), stepTime },
      { stepVolume: `${at}.water.${step}` },
    );
  ledger.derive(
    filterWater,
    { backwashWater: `${at}.water.backwash`, fastRinseWater: `${at}.water.fast-rinse` },
    { regenerationWater: `${at}.water` },
  );
};

const putDays = (s: Situation, ledger: Ledger): NonNullable<ProgramAdvice['days']> => {
  const limit = 'program.days.limit';
  ledger.assume(limit, quantity('time', rules.calendar.filter * secondsPerDay), 'common-practice');
  const held = wholeDays(s, ledger.need(limit));
  ledger.choose('program.set.days', quantity('time', held), 'whole-days', { limit });
  ledger.choose('program.interval', quantity('time', held), 'same', { days: 'program.set.days' });
  const found = s.found.days;
  if (found === undefined) return { set: 'program.set.days', limit, changed: false };
  ledger.given('program.found.days', { value: quantity('time', found * secondsPerDay), how: 'read' });
  return {
    set: 'program.set.days',
    limit,
    found: 'program.found.days',
    changed: Math.abs(found * secondsPerDay - held) > 1,
  };
};

const byCalendar = (): readonly Message[] => [message('program.filter-interval')];
