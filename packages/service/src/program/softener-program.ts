import {
  averageUse,
  potassiumDose,
  serviceTime,
  useOverTime,
  volumeBeforeReserve,
} from '@brinewright/physics';
import { fromUnit, parseQuantity, type Quantity, quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import {
  putBrineStep,
  putCapacity,
  putDoseOfRefill,
  putDraw,
  putRefillForDose,
  putRegenerationWater,
  putRinseTimes,
} from './chain.ts';
import type { ProgramAdvice } from './program-advice.ts';
import { downTo } from './rounding.ts';
import { dosesShown, rules } from './rules.ts';
import { timedSettings } from './timed-settings.ts';

const secondsPerDay = 86_400;

/** The found refill says what the bed gets now; its dose is kept when it is a sensible one. */
export const putFound = (s: Situation, ledger: Ledger): void => {
  const refill = s.found.refill;
  if (refill === undefined) return;
  ledger.given('program.found.refill', { value: refill, how: 'read' });
  putDoseOfRefill(ledger, 'program.found', 'program.found.refill');
  putCapacity(ledger, 'program.found', 'program.found.dose');
  putDraw(ledger, 'program.found');
};

/** The dose to program for: decided by the technician, kept as found when sensible, else the usual one. */
export const putDose = (s: Situation, ledger: Ledger): void => {
  const decided = decidedDose(s);
  if (decided !== undefined) {
    ledger.given('program.dose', { value: decided, how: 'told' });
    return;
  }
  const found = ledger.value('program.found.dose');
  const counted = ledger.value('program.found.dose.equivalent') ?? found;
  const sensible =
    found !== undefined &&
    counted !== undefined &&
    counted >= rules.dose.from.si * (1 - 1e-9) &&
    counted <= rules.dose.to.si * (1 + 1e-9);
  if (sensible) {
    const as = 'program.found.dose';
    ledger.choose('program.dose', quantity('salt-dose', found), 'dose-as-found', { found: as }, { as });
    return;
  }
  ledger.assume('program.rule.usual-dose', rules.dose.usual, 'ours');
  const put = ledger.derive(
    potassiumDose,
    { equivalentDose: 'program.rule.usual-dose', saltEquivalence: 'program.rule.salt-equivalence' },
    { saltDose: 'program.dose' },
  );
  if (!put) ledger.assume('program.dose', rules.dose.usual, 'ours');
};

/** The last dose the technician decided on, where it can be read; `program` says when it cannot. */
export const decidedDose = (s: Situation): Quantity<'salt-dose'> | undefined => {
  const written = s.visit.decided?.findLast(({ what }) => what === 'dose')?.value;
  const read = written === undefined ? undefined : parseQuantity(written, 'salt-dose');
  return read?.ok === true && read.quantity.si > 0 ? read.quantity : undefined;
};

/** Exact times for the dose, then what the controller can hold, then what that really gives. */
export const putAdvised = (s: Situation, ledger: Ledger) => {
  putRefillForDose(ledger, 'program', 'program.dose');
  putDraw(ledger, 'program');
  putRinseTimes(ledger, 'program');
  const timed = timedSettings(s, ledger);
  putAsSet(ledger);
  return timed;
};

/** The program as it will be set: rounded times run through the same lines. */
const putAsSet = (ledger: Ledger): void => {
  const refill = ledger.has('program.set.refill') ? 'program.set.refill' : 'program.refill.time';
  putDoseOfRefill(ledger, 'program.as-set', refill);
  putCapacity(ledger, 'program.as-set', 'program.as-set.dose');
  putDraw(ledger, 'program.as-set');
  if (ledger.has('program.set.brine')) putBrineStep(ledger, 'program.as-set', 'program.set.brine');
  const together = ledger.has('program.as-set.draw.really');
  putRegenerationWater(ledger, 'program.as-set', {
    backwash: 'program.set.backwash',
    draw: together ? 'program.as-set.draw.really' : 'program.set.draw',
    slowRinse: together ? 'program.as-set.slow-rinse.left' : 'program.set.slow-rinse',
    fastRinse: 'program.set.fast-rinse',
  });
};

export type Interval = Pick<ProgramAdvice, 'volume' | 'days'> & { readonly notes: readonly Message[] };

/** Volume or days between regenerations: capacity less one average day, and never beyond the calendar limit. */
export const putInterval = (s: Situation, ledger: Ledger): Interval => {
  const full = ledger.value('program.as-set.volume.full');
  if (full === undefined) return { notes: [] };
  const daily = ledger.value('situation.demand.daily');
  const notes: Message[] = isUsed(daily) ? [] : [message('program.no-reserve')];
  if (daily === undefined) ledger.assume('program.reserve', quantity('volume', 0), 'ours');
  else
    ledger.choose(
      'program.reserve',
      quantity('volume', daily),
      'one-day',
      { daily: 'situation.demand.daily' },
      { as: 'situation.demand.daily', source: 'common-practice' },
    );
  if (daily !== undefined && daily >= full) {
    notes.push(
      message('program.bed-too-small', { full: quantity('volume', full), daily: quantity('volume', daily) }),
    );
    const as = 'program.as-set.volume.full';
    ledger.choose('program.volume.exact', quantity('volume', full), 'no-reserve', { full: as }, { as });
  } else {
    ledger.derive(
      volumeBeforeReserve,
      { serviceVolume: 'program.as-set.volume.full', reserve: 'program.reserve' },
      { meteredVolume: 'program.volume.exact' },
    );
  }
  const volume = putVolume(s, ledger);
  const days = (isUsed(daily) ? putDays(s, ledger) : undefined) ?? daysByCalendar(s, ledger);
  return { ...(volume === undefined ? {} : { volume }), ...(days === undefined ? {} : { days }), notes };
};

const isUsed = (daily: number | undefined): boolean => daily !== undefined && daily > 0;

const meters = (s: Situation): boolean => s.controller?.starts.includes('metered') ?? true;

const putVolume = (s: Situation, ledger: Ledger): ProgramAdvice['volume'] => {
  const exact = ledger.value('program.volume.exact');
  if (exact === undefined || !meters(s)) return undefined;
  const range = s.controller?.volumes;
  const least = range?.min.si ?? 0;
  const down = downTo(exact, range?.by?.si ?? rules.volumeStep.si, least);
  const rounded = Math.max(least, Math.min(range?.max.si ?? Number.POSITIVE_INFINITY, down));
  ledger.choose('program.set.volume', quantity('volume', rounded), 'downward', {
    exact: 'program.volume.exact',
  });
  const found = s.found.volume;
  if (found !== undefined) ledger.given('program.found.volume', { value: found, how: 'read' });
  return {
    set: 'program.set.volume',
    ...(found === undefined ? {} : { found: 'program.found.volume' }),
    changed: found !== undefined && Math.abs(found.si - rounded) > 1e-6,
  };
};

/** Longest interval in days: by the calendar, shorter with iron. */
const calendarLimit = (ledger: Ledger): number =>
  (ledger.value('situation.water.iron') ?? 0) >= rules.calendar.ironFrom.si
    ? rules.calendar.iron
    : rules.calendar.plain;

const putDays = (s: Situation, ledger: Ledger): ProgramAdvice['days'] => {
  ledger.derive(averageUse, { dailyUse: 'situation.demand.daily' }, { averageUse: 'program.average-use' });
  const volume = ledger.has('program.set.volume') ? 'program.set.volume' : 'program.volume.exact';
  const put = ledger.derive(
    serviceTime,
    { meteredVolume: volume, averageUse: 'program.average-use' },
    { serviceTime: 'program.days.exact' },
  );
  if (!put) return undefined;
  putCalendarLimit(ledger);
  const exact = 'program.days.exact';
  const limit = 'program.days.limit';
  const shorter = Math.min(ledger.need(exact), ledger.need(limit));
  const as = ledger.need(exact) <= ledger.need(limit) ? exact : limit;
  ledger.choose('program.interval', quantity('time', shorter), 'calendar', { exact, limit }, { as });
  const clocked = !meters(s);
  ledger.choose(
    'program.set.days',
    quantity('time', wholeDays(s, clocked ? shorter : ledger.need(limit))),
    clocked ? 'whole-days' : 'override',
    { exact, limit },
  );
  return daysAdvice(s, ledger, exact);
};

const putCalendarLimit = (ledger: Ledger): void =>
  ledger.assume(
    'program.days.limit',
    quantity('time', calendarLimit(ledger) * secondsPerDay),
    'common-practice',
  );

/** Without the daily use nobody knows how long the bed lasts; the calendar still holds. */
const daysByCalendar = (s: Situation, ledger: Ledger): ProgramAdvice['days'] => {
  putCalendarLimit(ledger);
  const limit = 'program.days.limit';
  ledger.choose('program.set.days', quantity('time', wholeDays(s, ledger.need(limit))), 'override', {
    limit,
  });
  return daysAdvice(s, ledger);
};

/** What is keyed in, what is expected, and what stood there. */
const daysAdvice = (
  s: Situation,
  ledger: Ledger,
  expected?: FigureId,
): NonNullable<ProgramAdvice['days']> => {
  const found = s.found.days;
  if (found !== undefined)
    ledger.given('program.found.days-set', { value: quantity('time', found * secondsPerDay), how: 'read' });
  return {
    set: 'program.set.days',
    limit: 'program.days.limit',
    ...(expected === undefined ? {} : { expected }),
    ...(found === undefined ? {} : { found: 'program.found.days-set' }),
    changed: found !== undefined && Math.abs(found * secondsPerDay - ledger.need('program.set.days')) > 1,
  };
};

/** Days that a controller can hold, downward; never less than its shortest. */
export const wholeDays = (s: Situation, time: number): number => {
  const { min, max, by } = s.controller?.days ?? { min: 1, max: Number.POSITIVE_INFINITY, by: 1 };
  return Math.max(min, Math.min(max, downTo(time / secondsPerDay, by, min))) * secondsPerDay;
};

/** The usual doses, and the chosen one among them where it is none of these, from small to large. */
export const putDoses = (ledger: Ledger): ProgramAdvice['doses'] => {
  const chosen = ledger.need('program.dose');
  for (const pounds of dosesShown)
    ledger.assume(`program.dose-${pounds}.dose`, fromUnit(pounds, 'lb/ft3', 'salt-dose'), 'ours');
  const usual = dosesShown.map((pounds) =>
    doseRow(ledger, `program.dose-${pounds}`, `program.dose-${pounds}.dose`),
  );
  const close = (row: DoseRow): boolean => Math.abs(ledger.need(row.dose) - chosen) < 0.02 * chosen;
  const rows = usual.some(close) ? usual : [...usual, doseRow(ledger, 'program.chosen', 'program.dose')];
  return rows
    .filter(({ volume }) => ledger.has(volume))
    .toSorted((a, b) => ledger.need(a.dose) - ledger.need(b.dose))
    .map((row) => ({ ...row, chosen: close(row) }));
};

type DoseRow = Omit<ProgramAdvice['doses'][number], 'chosen'>;

const doseRow = (ledger: Ledger, at: string, dose: FigureId): DoseRow => {
  putCapacity(ledger, at, dose);
  putRefillForDose(ledger, at, dose);
  return { dose, capacity: `${at}.capacity`, volume: `${at}.volume.full`, salt: `${at}.salt` };
};

/** How long the found settings run between regenerations: as metered, or by the calendar. */
export const putFoundInterval = (s: Situation, ledger: Ledger): FigureId | undefined => {
  if (s.kind === 'filter') return ledger.has('program.found.days') ? 'program.found.days' : undefined;
  if (!ledger.has('program.average-use')) return undefined;
  if (s.found.volume !== undefined) {
    ledger.given('program.found.volume', { value: s.found.volume, how: 'read' });
    ledger.derive(
      serviceTime,
      { meteredVolume: 'program.found.volume', averageUse: 'program.average-use' },
      { serviceTime: 'program.found.days' },
    );
  } else if (s.found.days !== undefined) {
    ledger.given('program.found.days', {
      value: quantity('time', s.found.days * secondsPerDay),
      how: 'read',
    });
    ledger.derive(
      useOverTime,
      { dailyUse: 'situation.demand.daily', serviceTime: 'program.found.days' },
      { serviceVolume: 'program.found.volume' },
    );
  }
  return ledger.has('program.found.days') ? 'program.found.days' : undefined;
};
