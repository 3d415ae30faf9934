import {
  brineStepTime,
  costDifference,
  runningCost,
  waterWithLeak,
  yearlyDifference,
  yearlyUse,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { type Message, message } from '@brinewright/words';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import type { Situation } from '../situation/situation.ts';
import type { Gap } from '../stage/stage.ts';
import { putBrineStep, putRegenerationWater } from './chain.ts';
import type { YearlyDifference } from './program-advice.ts';
import { putFoundInterval } from './softener-program.ts';

export type Year = {
  readonly year: readonly YearlyDifference[];
  readonly gaps: readonly Gap[];
  readonly notes: readonly Message[];
};

/** What found and advised settings use and cost in a year, as far as demand and prices are known. */
export const putYear = (s: Situation, ledger: Ledger): Year => {
  putUse(ledger, 'program.as-set', 'program.interval');
  const found = putFoundInterval(s, ledger);
  if (found !== undefined) {
    if (s.kind === 'softener') putFoundWater(s, ledger);
    putUse(ledger, 'program.found', found);
  }
  const compared = ledger.derive(
    yearlyDifference,
    {
      foundSalt: 'program.found.salt-year',
      advisedSalt: 'program.as-set.salt-year',
      foundWater: 'program.found.water-year',
      advisedWater: 'program.as-set.water-year',
    },
    { saltDifference: 'program.year.salt', waterDifference: 'program.year.water' },
  );
  const salt = s.kind === 'softener' ? [row('salt', 'salt-year')] : [];
  const year: YearlyDifference[] = compared ? [...salt, row('water', 'water-year')] : [];
  const priced = putCosts(ledger, compared);
  if (priced) year.push(row('money', 'cost-year'));
  return {
    year,
    gaps: compared && !priced ? [priceGap(s)] : [],
    notes: s.kind === 'softener' ? hardEarly(ledger) : [],
  };
};

const row = (what: YearlyDifference['what'], name: string): YearlyDifference => ({
  what,
  found: `program.found.${name}`,
  set: `program.as-set.${name}`,
  difference: `program.year.${what === 'money' ? 'cost' : what}`,
});

/** Salt and water of a year; a leak found in service runs on top of the found regenerations. */
const putUse = (ledger: Ledger, at: string, interval: FigureId): void => {
  const leaks = at === 'program.found' && ledger.has('program.leak.year');
  const regenerations = leaks ? `${at}.regeneration-year` : `${at}.water-year`;
  ledger.derive(
    yearlyUse,
    { saltMass: `${at}.salt`, regenerationWater: `${at}.water`, serviceTime: interval },
    { saltPerYear: `${at}.salt-year`, waterPerYear: regenerations },
  );
  if (!leaks) return;
  ledger.derive(
    waterWithLeak,
    { regenerationPerYear: regenerations, leakPerYear: 'program.leak.year' },
    { waterPerYear: `${at}.water-year` },
  );
};

/** The found times where they were read; a step nobody read is taken as advised, and said so by its figure. */
const putFoundWater = (s: Situation, ledger: Ledger): void => {
  const time = (step: 'backwash' | 'fast-rinse'): FigureId => {
    const id = `program.found.${step}`;
    const read = s.found[step];
    if (read !== undefined) ledger.given(id, { value: read, how: 'read' });
    else if (ledger.has(`program.set.${step}`))
      ledger.choose(id, quantity('time', ledger.need(`program.set.${step}`)), 'as-advised', {
        advised: `program.set.${step}`,
      });
    return id;
  };
  const brine = foundBrineStep(s, ledger);
  if (brine !== undefined) putBrineStep(ledger, 'program.found', brine);
  putRegenerationWater(ledger, 'program.found', {
    backwash: time('backwash'),
    draw: 'program.found.draw.really',
    slowRinse: 'program.found.slow-rinse.left',
    fastRinse: time('fast-rinse'),
  });
};

const foundBrineStep = (s: Situation, ledger: Ledger): FigureId | undefined => {
  const { brine, draw } = s.found;
  const slow = s.found['slow-rinse'];
  const id = 'program.found.brine';
  if (brine !== undefined) ledger.given(id, { value: brine, how: 'read' });
  else if (draw !== undefined && slow !== undefined) {
    ledger.given('program.found.draw', { value: draw, how: 'read' });
    ledger.given('program.found.slow-rinse', { value: slow, how: 'read' });
    ledger.derive(
      brineStepTime,
      { drawTime: 'program.found.draw', slowRinseTime: 'program.found.slow-rinse' },
      { brineStepTime: id },
    );
  } else if (ledger.has('program.brine.time'))
    ledger.choose(id, quantity('time', ledger.need('program.brine.time')), 'as-advised', {
      advised: 'program.brine.time',
    });
  return ledger.has(id) ? id : undefined;
};

const putCosts = (ledger: Ledger, compared: boolean): boolean => {
  if (!compared) return false;
  for (const at of ['program.found', 'program.as-set']) {
    ledger.derive(
      runningCost,
      {
        saltPerYear: `${at}.salt-year`,
        waterPerYear: `${at}.water-year`,
        saltPrice: 'situation.price.salt',
        waterPrice: 'situation.price.water',
        sewerPrice: 'situation.price.sewer',
      },
      { costPerYear: `${at}.cost-year` },
    );
  }
  return ledger.derive(
    costDifference,
    { foundCost: 'program.found.cost-year', advisedCost: 'program.as-set.cost-year' },
    { costDifference: 'program.year.cost' },
  );
};

const priceGap = (s: Situation): Gap => ({
  needs: ['site', 'prices'],
  message: message('program.gap.prices', { site: s.visit.site.name }),
  settles: ['program'],
});

/** The found interval outlasts what the found salt can soften. */
const hardEarly = (ledger: Ledger): readonly Message[] => {
  const asked = ledger.value('program.found.volume');
  const full = ledger.value('program.found.volume.full');
  if (asked === undefined || full === undefined || asked <= full) return [];
  return [
    message('program.found-hard-early', { full: quantity('volume', full), asked: quantity('volume', asked) }),
  ];
};
