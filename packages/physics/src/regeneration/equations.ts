import type { Equation } from '../meta/equation.ts';
import { bedSize, dryResin } from './bed-size.ts';
import { blendPast } from './blending.ts';
import { agedCapacity, bedExchange, capacityFromDose } from './capacity.ts';
import { leakPerDay, waterPerExchange, yearlyUse } from './consumption.ts';
import { regenerationTime, regenerationWater, stepVolume } from './cycle.ts';
import { dilutedBrine, drawTime } from './draw.ts';
import { batchExchange, separationCapacity } from './exchange-equilibrium.ts';
import { compensatedHardness, sodiumAdded } from './hardness-load.ts';
import { exchangeNeeded, serviceTime, volumeBeforeReserve, volumeBetween } from './interval.ts';
import { brineFromRefill, refillTime, refillWater, saltFromRefill } from './refill.ts';
import { rinseTime, rinseVolume } from './rinse.ts';
import { saltDose, saltEfficiency, saltMass, theoreticalSalt } from './salt.ts';

export const regenerationEquations: readonly Equation[] = [
  compensatedHardness,
  capacityFromDose,
  agedCapacity,
  bedExchange,
  saltMass,
  saltDose,
  theoreticalSalt,
  saltEfficiency,
  refillWater,
  refillTime,
  saltFromRefill,
  brineFromRefill,
  drawTime,
  dilutedBrine,
  rinseVolume,
  rinseTime,
  stepVolume,
  regenerationWater,
  regenerationTime,
  waterPerExchange,
  exchangeNeeded,
  volumeBetween,
  volumeBeforeReserve,
  serviceTime,
  yearlyUse,
  sodiumAdded,
  blendPast,
  leakPerDay,
  separationCapacity,
  batchExchange,
  bedSize,
  dryResin,
];
