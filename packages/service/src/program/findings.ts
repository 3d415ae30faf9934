import { rinseTime } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import { putDoseAtRate } from './chain.ts';
import type { BackwashWindow } from './program-advice.ts';
import { rules } from './rules.ts';

/** What the found settings do, in sentences: too much or too little salt, a short rinse, brine that stays behind. */
export const foundNotes = (ledger: Ledger): readonly Message[] => {
  const found = ledger.value('program.found.dose');
  const dose = ledger.value('program.dose');
  if (found === undefined || dose === undefined) return [];
  const notes: Message[] = [];
  const values = { found: quantity('salt-dose', found), dose: quantity('salt-dose', dose) };
  if (found > dose * 1.1) notes.push(message('program.found-too-much', values));
  if (found < dose * 0.9) notes.push(message('program.found-too-little', values));
  return [...notes, ...shortRinse(ledger)];
};

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

const shortRinse = (ledger: Ledger): readonly Message[] => {
  const rinsed = ledger.value('program.found.slow-rinse.bed-volumes');
  const draw = ledger.value('program.found.draw.time');
  const step = ledger.value('program.found.brine');
  if (rinsed === undefined || draw === undefined || step === undefined) return [];
  const values = {
    draw: quantity('time', draw),
    step: quantity('time', step),
    rinsed: quantity('bed-volumes', rinsed),
  };
  if (draw > step * (1 + 1e-9)) return [message('program.found-no-rinse', values)];
  return rinsed < rules.slowRinse.least.si ? [message('program.found-short-rinse', values)] : [];
};

/**
 * Once, before the new settings can work: the brine that stands in the tank was made by the old refill, and an
 * exhausted bed is not restored by one low dose.
 */
export const onceNotes = (s: Situation, ledger: Ledger): readonly Message[] => [
  ...standingBrine(ledger),
  ...(s.subject.bedNow === 'exhausted' ? exhaustedBed(ledger) : []),
];

const standingBrine = (ledger: Ledger): readonly Message[] => {
  const standing = ledger.value('program.found.salt');
  const wanted = ledger.value('program.as-set.salt');
  const water = ledger.value('program.found.refill.water');
  const wantedWater = ledger.value('program.as-set.refill.water');
  const brine = ledger.value('program.found.brine.volume');
  const draw = ledger.value('program.found.draw.time');
  const rinse = ledger.value('program.slow-rinse.time');
  if (standing === undefined || wanted === undefined || water === undefined || wantedWater === undefined)
    return [];
  const values = {
    standing: quantity('mass', standing),
    wanted: quantity('mass', wanted),
    more: quantity('volume', Math.max(0, wantedWater - water)),
  };
  if (standing < wanted * 0.95) return [message('program.once.add-water', values)];
  if (standing <= wanted * 1.05 || brine === undefined || draw === undefined || rinse === undefined)
    return [];
  return [
    message('program.once.much-brine', {
      ...values,
      brine: quantity('volume', brine),
      step: quantity('time', draw + rinse),
    }),
  ];
};

const exhaustedBed = (ledger: Ledger): readonly Message[] => {
  const heavy = ledger.value('program.dose-15.salt');
  const time = ledger.value('program.dose-15.refill.time');
  if (heavy === undefined || time === undefined) return [message('program.once.exhausted-twice')];
  return [
    message('program.once.exhausted', { salt: quantity('mass', heavy), refill: quantity('time', time) }),
  ];
};

/** What hangs on the water and the salt rather than on the valve. */
export const siteNotes = (s: Situation, ledger: Ledger): readonly Message[] => {
  const notes: Message[] = [];
  const sodium = ledger.value('program.sodium');
  if (s.subject.salt === 'potassium') notes.push(message('program.potassium'));
  else if (sodium !== undefined)
    notes.push(message('program.sodium', { sodium: quantity('concentration', sodium) }));
  const iron = ledger.value('situation.water.iron') ?? 0;
  if (iron > 2e-3) notes.push(message('program.iron-much', { iron: quantity('concentration', iron) }));
  else if (iron >= rules.calendar.ironFrom.si)
    notes.push(message('program.iron-some', { iron: quantity('concentration', iron) }));
  return notes;
};

/** Another drain control than the fitted one, with the fast rinse that goes with it. */
export const drainInstead = (
  s: Situation,
  ledger: Ledger,
  window: BackwashWindow | undefined,
): readonly Message[] => {
  if (window?.state !== 'open' || (window.fits !== 'below' && window.fits !== 'above')) return [];
  const fitted = quantity('flow', ledger.need('situation.rate.backwash'));
  const control = s.family.controls.drain.find(({ id }) => id === window.choice);
  if (control === undefined) return [message(`program.window.fitted-${window.fits}`, { fitted })];
  const at = `program.instead.${control.id}`;
  ledger.define(`${at}.rate`, control.rate, control.id);
  const put = ledger.derive(
    rinseTime,
    {
      bedVolumes: 'program.rule.fast-rinse',
      resinVolume: 'situation.bed.volume',
      rinseFlow: `${at}.rate`,
    },
    { rinseTime: `${at}.fast-rinse.time` },
  );
  const values = { fitted, control: control.title };
  return put
    ? [
        message(`program.window.fit-${window.fits}-rinse`, {
          ...values,
          rinse: quantity('time', ledger.need(`${at}.fast-rinse.time`)),
        }),
      ]
    : [message(`program.window.fit-${window.fits}`, values)];
};
