import type { Equation } from '../meta/equation.ts';
import { waterDensity } from './density.ts';
import { waterVapourPressure } from './vapour-pressure.ts';
import { waterKinematicViscosity, waterViscosity } from './viscosity.ts';

export const waterEquations: readonly Equation[] = [
  waterDensity,
  waterViscosity,
  waterKinematicViscosity,
  waterVapourPressure,
];
