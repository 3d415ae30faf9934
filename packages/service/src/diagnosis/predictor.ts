import type { DiagnosisTest } from '@brinewright/equipment';
import type { Situation } from '../situation/situation.ts';

/** Odds of a test's outcomes, in their order; they sum to 1. */
export type Distribution = Float64Array;

/** What a fault makes of a test. Stated odds now; physics takes its place behind the same interface. */
export interface Predictor {
  readonly version: string;
  /** `fault` is an id of the family, or 'none-of-these'. */
  predict(fault: string, test: DiagnosisTest, s: Situation): Distribution;
}
