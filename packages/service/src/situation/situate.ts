import { type Controller, type Equipment, type Family, undescribed } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { type Issue, message } from '@brinewright/words';
import { type Ledger, openLedger } from '../derivation/ledger.ts';
import { blocked, done, type Gap, type Stage, stageNames } from '../stage/stage.ts';
import type { Conditioner, Visit } from '../visit/schema.ts';
import { didYouMean } from './did-you-mean.ts';
import { putBrineTank } from './figures-of-brine.ts';
import { chartIssues, gapsOfRates, putMeasuredRates, putRates } from './figures-of-rates.ts';
import { putDemand, putPrices, putSupply } from './figures-of-site.ts';
import { mediumOf, putBed, putPail, putTank } from './figures-of-tank.ts';
import { judgeWater, putWater } from './figures-of-water.ts';
import { changesOf, complaintsOf, servicedRecently } from './heard.ts';
import { ownController } from './own-controller.ts';
import { readReadings } from './read-readings.ts';
import { judgeSeasons } from './seasons.ts';
import type { Situation, TestReading } from './situation.ts';
import { unknownIds } from './unknown-ids.ts';
import { unusedEntries } from './unused-entries.ts';

/**
 * Stage 0: what is given, measured, read and assumed, every number a figure. Blocked only when nobody knows which
 * unit is meant or what it is; everything else that is missing is a gap, and later stages go on.
 */
export const situate = (visit: Visit, equipment: Equipment, now: string): Stage<Situation> => {
  const subject = visit.conditioners.find(({ id }) => id === visit.subject);
  if (subject === undefined) return blocked([], { issues: [noSubject(visit)] });
  const family = equipment.families.get(subject.family);
  if (family === undefined) return blocked([], { issues: [noFamily(visit, subject, equipment)] });

  const ledger = openLedger();
  const gaps = putFigures(visit, subject, family, equipment, ledger);
  const { readings, issues } = readReadings(visit, family);
  putReadings(readings, ledger);
  const setAside = putMeasuredRates(ledger);
  const situation: Situation = {
    visit,
    equipment,
    subject,
    family,
    kind: subject.kind,
    described: family.id !== undescribed,
    medium: mediumOf(subject, equipment),
    controller: controllerOf(subject, family),
    found: visit.settings?.found ?? {},
    answers: (visit.answers ?? []).filter((a) => (a.conditioner ?? visit.subject) === visit.subject),
    readings,
    changes: changesOf(visit, family),
    complaints: complaintsOf(visit, family),
    recentlyServiced: servicedRecently(visit, now),
    figures: ledger.figures(),
  };
  return done(situation, {
    figures: ledger.figures(),
    gaps: [...gaps, ...gapsOfRates(subject, ledger), ...gapsOfController(situation)],
    issues: [
      ...judgeWater(visit).issues,
      ...judgeSeasons(visit),
      ...issues,
      ...setAside,
      ...chartIssues(subject, family, ledger),
      ...unknownIds(visit, subject, family, equipment),
      ...unusedEntries(visit, subject),
      ...ledger.issues(),
    ],
  });
};

const putFigures = (
  visit: Visit,
  subject: Conditioner,
  family: Family,
  equipment: Equipment,
  ledger: Ledger,
): readonly Gap[] => {
  const water = putWater(visit, ledger);
  putSupply(visit, ledger);
  const demand = putDemand(visit, ledger);
  putPrices(visit, ledger);
  const tank = putTank(subject, ledger);
  const bed = putBed(subject, mediumOf(subject, equipment), ledger);
  putPail(subject, ledger);
  putRates(subject, family, ledger);
  if (subject.kind === 'softener') putBrineTank(visit, subject, ledger);
  return [...water, ...tank, ...bed, ...demand];
};

/** A reading is a figure like any other: later stages and derivations address it. */
const putReadings = (readings: readonly TestReading[], ledger: Ledger): void => {
  for (const reading of readings) {
    if (reading.kind !== 'quantity' || reading.test.reading === undefined) continue;
    const { kind } = reading.test.reading;
    ledger.given(`reading.${reading.test.id}`, {
      value: quantity(kind, reading.value),
      how: 'measured',
      u: quantity(kind, reading.u),
    });
  }
};

const controllerOf = (subject: Conditioner, family: Family): Controller | undefined =>
  ownController(subject) ?? family.controllers.find(({ id }) => id === subject.fitted?.controller);

const gapsOfController = (s: Situation): readonly Gap[] =>
  s.controller !== undefined
    ? []
    : [
        {
          needs: ['conditioners', s.subject.id, 'fitted', 'controller'],
          message: message('situation.gap.controller'),
          settles: ['program', 'proof'],
        },
      ];

const noSubject = (visit: Visit): Issue => ({
  code: 'no-subject',
  severity: 'error',
  at: ['subject'],
  message: message('situation.no-subject', { subject: visit.subject }),
  mend: message('situation.no-subject-mend', { ids: visit.conditioners.map(({ id }) => id).join(', ') }),
});

const noFamily = (visit: Visit, subject: Conditioner, equipment: Equipment): Issue => {
  const known = [...equipment.families.keys()];
  return {
    code: 'unknown-family',
    severity: 'error',
    at: ['conditioners', visit.conditioners.indexOf(subject), 'family'],
    message: message('situation.unknown-family', { family: subject.family }),
    mend: didYouMean(
      subject.family,
      known,
      message('situation.unknown-family-mend', { families: known.join(', ') }),
    ),
  };
};

/** For stages that cannot begin without a situation. */
export const waitsForSituation = (): Stage<never> =>
  blocked([{ needs: [], message: message('situation.gap.situation'), settles: stageNames }]);
