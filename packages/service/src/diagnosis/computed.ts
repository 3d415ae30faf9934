import { toUnit } from '@brinewright/units';
import type { Figures } from '../derivation/figure.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';

const compared = stockIds.tests.programCompared;

/** Pounds per cubic foot that a sensible program uses, and how far off is plainly wrong; common practice, no source. */
const sensible = { from: 6, to: 10, off: 0.25 } as const;

/**
 * What the engine answers itself: the found program against what unit and water ask for, from the figures of the
 * found settings. It never says that all agrees, for clock, meter and valve type are not in the figures; an answer of
 * the technician goes before it.
 */
export const computedReadings = (s: Situation, figures: Figures): readonly TestReading[] => {
  const test = s.family.tests.find(({ id, kinds }) => id === compared && kinds.includes(s.kind));
  const said = s.readings.some((reading) => reading.test.id === compared && reading.kind !== 'cannot-do');
  const outcome = outcomeOf(figures);
  return test === undefined || said || !test.outcomes.some(({ id }) => id === outcome)
    ? []
    : [{ kind: 'state', test, outcome }];
};

const outcomeOf = (figures: Figures): string => {
  if (isDoseOff(figures)) return 'refill-off';
  return waitsTooLong(figures) ? 'volume-off' : '';
};

/** Potassium chloride counts by its equivalents. What was decided to be kept is not off. */
const isDoseOff = (figures: Figures): boolean => {
  const dose = figures['program.found.dose.equivalent'] ?? figures['program.found.dose'];
  const wanted = figures['program.dose.equivalent'] ?? figures['program.dose'];
  if (dose === undefined || isNear(dose.quantity.si, wanted?.quantity.si)) return false;
  const pounds = toUnit(dose.quantity, 'lb/ft3');
  return pounds < sensible.from * (1 - sensible.off) || pounds > sensible.to * (1 + sensible.off);
};

const isNear = (dose: number, wanted = 0): boolean => Math.abs(dose - wanted) <= sensible.off * wanted;

/** The found volume, as metered or by the calendar, is more than the found salt softens. */
const waitsTooLong = (figures: Figures): boolean => {
  const waits = figures['program.found.volume']?.quantity.si;
  const softens = figures['program.found.volume.full']?.quantity.si;
  return waits !== undefined && softens !== undefined && waits > softens;
};
