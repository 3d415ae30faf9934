import {
  agedCapacity,
  bedExchange,
  bedVolumesThrough,
  brineFromRefill,
  capacityFromDose,
  drawTime,
  equivalentDose,
  refillTime,
  refillWater,
  regenerationWater,
  rinseLeft,
  rinseTime,
  saltDose,
  saltFromRefill,
  saltMass,
  stepVolume,
  volumeBetween,
} from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import type { FigureId } from '../derivation/figure.ts';
import type { Ledger } from '../derivation/ledger.ts';
import { rateOf } from './rates.ts';

/*
 * The arithmetic of one regeneration, put under a prefix so that the advised program, the program as it will be set,
 * the found one and every rounding neighbour go through the same lines.
 */

/** What a dose makes of the bed: capacity, exchange, and the water it softens. */
export const putCapacity = (ledger: Ledger, at: string, dose: FigureId): void => {
  ledger.derive(
    capacityFromDose,
    { saltDose: asSodium(ledger, at, dose) },
    { capacity: `${at}.capacity.new` },
  );
  ledger.derive(
    agedCapacity,
    { capacity: `${at}.capacity.new`, resinAge: 'situation.bed.age', yearlyLoss: 'program.rule.yearly-loss' },
    { agedCapacity: `${at}.capacity` },
  );
  ledger.derive(
    bedExchange,
    { capacity: `${at}.capacity`, resinVolume: 'situation.bed.volume' },
    { exchange: `${at}.exchange` },
  );
  ledger.derive(
    volumeBetween,
    {
      exchange: `${at}.exchange`,
      hardness: 'program.hardness',
      remainingHardness: 'program.rule.remaining-hardness',
    },
    { serviceVolume: `${at}.volume.full` },
  );
};

/** The capacity curve is one of common salt: potassium chloride counts by its equivalents. */
const asSodium = (ledger: Ledger, at: string, dose: FigureId): FigureId => {
  const equivalent = `${at}.dose.equivalent`;
  const put = ledger.derive(
    equivalentDose,
    { saltDose: dose, saltEquivalence: 'program.rule.salt-equivalence' },
    { equivalentDose: equivalent },
  );
  return put ? equivalent : dose;
};

/** From dose to the refill that brings it. */
export const putRefillForDose = (ledger: Ledger, at: string, dose: FigureId): void => {
  ledger.derive(
    saltMass,
    { saltDose: dose, resinVolume: 'situation.bed.volume' },
    { saltMass: `${at}.salt` },
  );
  ledger.derive(
    refillWater,
    { saltMass: `${at}.salt`, saltPerWater: 'program.brine.salt-per-water' },
    { refillWater: `${at}.refill.water` },
  );
  ledger.derive(
    refillTime,
    { refillWater: `${at}.refill.water`, refillFlow: 'situation.rate.refill' },
    { refillTime: `${at}.refill.time` },
  );
};

/** From a refill time to the dose it brings through the control that is fitted. */
export const putDoseOfRefill = (ledger: Ledger, at: string, time: FigureId): void =>
  putDoseAtRate(ledger, at, time, 'situation.rate.refill');

export const putDoseAtRate = (ledger: Ledger, at: string, time: FigureId, rate: FigureId): void => {
  ledger.derive(stepVolume, { stepFlow: rate, stepTime: time }, { stepVolume: `${at}.refill.water` });
  ledger.derive(
    saltFromRefill,
    { refillTime: time, refillFlow: rate, saltPerWater: 'program.brine.salt-per-water' },
    { saltMass: `${at}.salt` },
  );
  ledger.derive(
    saltDose,
    { saltMass: `${at}.salt`, resinVolume: 'situation.bed.volume' },
    { saltDose: `${at}.dose` },
  );
};

/** Brine that the refill water makes and how long the injector takes to draw it. */
export const putDraw = (ledger: Ledger, at: string): void => {
  ledger.derive(
    brineFromRefill,
    {
      refillWater: `${at}.refill.water`,
      temperature: 'situation.brine.temperature',
      massFraction: 'program.brine.saturation',
    },
    { brineVolume: `${at}.brine.volume` },
  );
  ledger.derive(
    drawTime,
    { brineVolume: `${at}.brine.volume`, drawFlow: 'situation.rate.draw' },
    { drawTime: `${at}.draw.time` },
  );
};

export const putRinseTimes = (ledger: Ledger, at: string): void => {
  ledger.derive(
    rinseTime,
    {
      bedVolumes: 'program.rule.slow-rinse',
      resinVolume: 'situation.bed.volume',
      rinseFlow: 'situation.rate.slow-rinse',
    },
    { rinseTime: `${at}.slow-rinse.time` },
  );
  ledger.derive(
    rinseTime,
    {
      bedVolumes: 'program.rule.fast-rinse',
      resinVolume: 'situation.bed.volume',
      rinseFlow: rateOf(ledger, at, 'fast-rinse'),
    },
    { rinseTime: `${at}.fast-rinse.time` },
  );
};

/**
 * What really happens in a brine step of this length: the draw ends with the brine or with the step, and what is left
 * rinses.
 */
export const putBrineStep = (ledger: Ledger, at: string, step: FigureId): void => {
  const length = ledger.value(step);
  const draws = ledger.value(`${at}.draw.time`);
  if (length === undefined || draws === undefined) return;
  const inputs = { draw: `${at}.draw.time`, step };
  const as = draws <= length ? inputs.draw : step;
  ledger.choose(`${at}.draw.really`, quantity('time', Math.min(length, draws)), 'shorter', inputs, { as });
  ledger.derive(
    stepVolume,
    { stepFlow: 'situation.rate.draw', stepTime: `${at}.draw.really` },
    { stepVolume: `${at}.brine.drawn` },
  );
  ledger.derive(
    rinseLeft,
    { brineStepTime: step, drawTime: `${at}.draw.time` },
    { slowRinseTime: `${at}.slow-rinse.left` },
  );
  putRinsed(ledger, at, `${at}.slow-rinse.left`);
};

/** Bed volumes that a slow rinse of this length sends through the bed. */
export const putRinsed = (ledger: Ledger, at: string, time: FigureId): void => {
  ledger.derive(
    bedVolumesThrough,
    { rinseFlow: 'situation.rate.slow-rinse', rinseTime: time, resinVolume: 'situation.bed.volume' },
    { bedVolumes: `${at}.slow-rinse.bed-volumes` },
  );
};

export type StepTimes = {
  readonly backwash: FigureId;
  readonly draw: FigureId;
  readonly slowRinse: FigureId;
  readonly fastRinse: FigureId;
};

/** Water that one regeneration sends to drain. */
export const putRegenerationWater = (ledger: Ledger, at: string, times: StepTimes): void => {
  const steps = [
    ['backwash', rateOf(ledger, at, 'backwash'), times.backwash],
    ['motive', 'situation.rate.slow-rinse', times.draw],
    ['slow-rinse', 'situation.rate.slow-rinse', times.slowRinse],
    ['fast-rinse', rateOf(ledger, at, 'fast-rinse'), times.fastRinse],
  ] as const;
  for (const [name, stepFlow, stepTime] of steps) {
    ledger.derive(stepVolume, { stepFlow, stepTime }, { stepVolume: `${at}.water.${name}` });
  }
  ledger.derive(
    regenerationWater,
    {
      backwashWater: `${at}.water.backwash`,
      motiveWater: `${at}.water.motive`,
      slowRinseWater: `${at}.water.slow-rinse`,
      fastRinseWater: `${at}.water.fast-rinse`,
      refillWater: `${at}.refill.water`,
    },
    { regenerationWater: `${at}.water` },
  );
};

export const putFastRinsed = (ledger: Ledger, at: string): void => {
  ledger.derive(
    bedVolumesThrough,
    {
      rinseFlow: rateOf(ledger, at, 'fast-rinse'),
      rinseTime: `${at}.time`,
      resinVolume: 'situation.bed.volume',
    },
    { bedVolumes: `${at}.fast-rinse.bed-volumes` },
  );
};

export const putBackwashWater = (ledger: Ledger, at: string): void => {
  ledger.derive(
    stepVolume,
    { stepFlow: rateOf(ledger, at, 'backwash'), stepTime: `${at}.time` },
    { stepVolume: `${at}.water.backwash` },
  );
};
