import { rinseTime } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { putDoseAtRate } from './chain.ts';
import type { BackwashWindow } from './program-advice.ts';
import { controlToFit } from './rates.ts';
import { neighboursOf, upward } from './rounding.ts';
import { anyController } from './timed-settings.ts';

/**
 * The other way to mend a wrong dose: the refill control for which the found time would be right. Time or control,
 * never both.
 */
export const controlInstead = (s: Situation, ledger: Ledger): readonly Message[] => {
  const found = ledger.value('program.found.dose');
  const dose = ledger.value('program.dose');
  const time = s.found.refill;
  if (found === undefined || dose === undefined || time === undefined) return [];
  if (Math.abs(found / dose - 1) <= 0.1) return [];
  const options = s.family.controls.refill
    .filter(({ id }) => id !== s.subject.fitted?.refill)
    .flatMap((control) => {
      const at = `program.instead.${control.id}`;
      ledger.define(`${at}.rate`, control.rate, control.id);
      putDoseAtRate(ledger, at, 'program.found.refill', `${at}.rate`);
      const given = ledger.value(`${at}.dose`);
      return given === undefined || Math.abs(given / dose - 1) > 0.25 ? [] : [{ control, given }];
    });
  return options.map(({ control, given }) =>
    message('program.control-instead', { control: control.title, time, dose: quantity('salt-dose', given) }),
  );
};

/** Another drain control than the fitted one, and the fast rinse that stays until it is in. */
export const drainInstead = (
  s: Situation,
  ledger: Ledger,
  window: BackwashWindow | undefined,
): readonly Message[] => {
  if (window?.state !== 'open' || (window.fits !== 'below' && window.fits !== 'above')) return [];
  const fitted = quantity('flow', ledger.need('situation.rate.backwash'));
  const choice = s.family.controls.drain.find(({ id }) => id === window.choice);
  if (choice === undefined) return [message(`program.window.fitted-${window.fits}`, { fitted })];
  const values = { fitted, control: choice.title };
  if (controlToFit(s, window) === undefined) return [message(`program.window.nearly-${window.fits}`, values)];
  const until = rinseUntilThen(s, ledger);
  return until === undefined
    ? [message(`program.window.fit-${window.fits}`, values)]
    : [message(`program.window.fit-${window.fits}-rinse`, { ...values, rinse: quantity('time', until) })];
};

/** The fast rinse that the fitted control needs, as the controller holds it, never shorter. */
const rinseUntilThen = (s: Situation, ledger: Ledger): number | undefined => {
  ledger.derive(
    rinseTime,
    {
      bedVolumes: 'program.rule.fast-rinse',
      resinVolume: 'situation.bed.volume',
      rinseFlow: 'situation.rate.fast-rinse',
    },
    { rinseTime: 'program.until-then.fast-rinse.time' },
  );
  const exact = ledger.value('program.until-then.fast-rinse.time');
  return exact === undefined
    ? undefined
    : upward(exact, neighboursOf(exact, (s.controller ?? anyController).times));
};
