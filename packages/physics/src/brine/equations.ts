import type { Equation } from '../meta/equation.ts';
import { brineDensity, brineSalt } from './density.ts';
import { brineMade, saltPerWater } from './dissolve.ts';
import { potassiumChlorideDensity, potassiumChlorideSolubility } from './potassium-chloride.ts';
import { salometerBrine, salometerReading } from './salometer.ts';
import { saltSolubility, saltSolubilitySparrow } from './solubility.ts';

export const brineEquations: readonly Equation[] = [
  brineDensity,
  brineSalt,
  saltSolubility,
  saltSolubilitySparrow,
  salometerBrine,
  salometerReading,
  saltPerWater,
  brineMade,
  potassiumChlorideSolubility,
  potassiumChlorideDensity,
];
