import type { Equation } from '../meta/equation.ts';
import { pailRate } from './pail.ts';

export const measureEquations: readonly Equation[] = [pailRate];
