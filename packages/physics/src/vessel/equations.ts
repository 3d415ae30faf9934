import type { Equation } from '../meta/equation.ts';
import { bedVolume, crossSection, freeHeight, insideDiameter, tankVolume, upflowRate } from './tank.ts';

export const vesselEquations: readonly Equation[] = [
  insideDiameter,
  crossSection,
  bedVolume,
  tankVolume,
  freeHeight,
  upflowRate,
];
