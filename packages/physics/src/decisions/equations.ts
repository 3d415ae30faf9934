import type { Equation } from '../meta/equation.ts';
import { bayesUpdate } from './bayes.ts';
import { baseStock, newsvendorNormal, newsvendorPoisson } from './stock.ts';

export const decisionEquations: readonly Equation[] = [
  bayesUpdate,
  newsvendorNormal,
  newsvendorPoisson,
  baseStock,
];
