import type { Equation } from '../meta/equation.ts';
import { bedDepth, expansionAtFreeHeight, flowForUpflow } from './bed-depth.ts';
import { airGapNeeded, costDifference, runningCost, yearlyDifference } from './cost.ts';
import { equivalentDose, potassiumDose } from './potassium.ts';
import { averageUse, bedVolumesThrough, brineStepTime, rinseLeft, useOverTime } from './times.ts';
import { flowLimits, volumeLimits } from './tolerance.ts';
import { filterWater, waterCost, waterWithLeak } from './water-cost.ts';

export const settingsEquations: readonly Equation[] = [
  bedDepth,
  expansionAtFreeHeight,
  flowForUpflow,
  brineStepTime,
  rinseLeft,
  bedVolumesThrough,
  averageUse,
  useOverTime,
  runningCost,
  yearlyDifference,
  costDifference,
  airGapNeeded,
  equivalentDose,
  potassiumDose,
  waterCost,
  waterWithLeak,
  filterWater,
  flowLimits,
  volumeLimits,
];
