import type { Equation } from '../meta/equation.ts';
import { chargeBalance } from './charge-balance.ts';
import { conductivityAt, waterConductivity } from './conductivity.ts';
import { dissolvedSolids } from './dissolved-solids.ts';
import { fullHardness, hardnessFromIons, hardnessWithStrontium } from './hardness.ts';

export const ionEquations: readonly Equation[] = [
  hardnessFromIons,
  hardnessWithStrontium,
  fullHardness,
  chargeBalance,
  dissolvedSolids,
  waterConductivity,
  conductivityAt,
];
