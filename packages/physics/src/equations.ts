import { bedEquations } from './bed/equations.ts';
import { brineEquations } from './brine/equations.ts';
import { decisionEquations } from './decisions/equations.ts';
import { hydraulicsEquations } from './hydraulics/equations.ts';
import { ionEquations } from './ions/equations.ts';
import { measureEquations } from './measure/equations.ts';
import type { Equation } from './meta/equation.ts';
import { regenerationEquations } from './regeneration/equations.ts';
import { settingsEquations } from './settings/equations.ts';
import { vesselEquations } from './vessel/equations.ts';
import { waterEquations } from './water/equations.ts';

/** Every public equation: the list of the laboratory, the range checks and the table of sources are made from it. */
export const equations: readonly Equation[] = [
  ...waterEquations,
  ...brineEquations,
  ...ionEquations,
  ...regenerationEquations,
  ...settingsEquations,
  ...bedEquations,
  ...hydraulicsEquations,
  ...vesselEquations,
  ...measureEquations,
  ...decisionEquations,
];
