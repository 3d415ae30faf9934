import type {
  ConditionerKind,
  Controller,
  DiagnosisTest,
  Equipment,
  Family,
  Medium,
} from '@brinewright/equipment';
import type { Figures } from '../derivation/figure.ts';
import type { Conditioner, ProgramSettings, TellAnswer, Visit } from '../visit/schema.ts';

/** All readings of one test: the repeats, their median with its uncertainty, and which of them is a wild one. */
export type TestReading =
  | {
      readonly kind: 'quantity';
      readonly test: DiagnosisTest;
      readonly repeats: readonly number[];
      readonly wild: readonly number[];
      readonly value: number;
      readonly u: number;
    }
  | { readonly kind: 'state'; readonly test: DiagnosisTest; readonly outcome: string }
  | { readonly kind: 'cannot-do'; readonly test: DiagnosisTest };

/**
 * Everything later stages read, and nothing else: the subject of the visit with its equipment, every number a
 * figure with how it is known, every default one that is 'assumed'.
 */
export type Situation = {
  readonly visit: Visit;
  readonly equipment: Equipment;
  readonly subject: Conditioner;
  readonly family: Family;
  readonly kind: ConditionerKind;
  /** False for a make nobody has described: functions only, no parts, no inner order. */
  readonly described: boolean;
  readonly medium: Medium | undefined;
  readonly controller: Controller | undefined;
  readonly found: ProgramSettings;
  readonly answers: readonly TellAnswer[];
  readonly readings: readonly TestReading[];
  readonly changes: readonly string[];
  readonly complaints: readonly string[];
  /** Somebody worked on it within about two months before the visit. */
  readonly recentlyServiced: boolean;
  readonly figures: Figures;
};

/** Which fitted things (feature `injector` or `fitted.*`) are known by id. */
export type FittedIds = {
  readonly injector?: string;
  readonly drain?: string;
  readonly refill?: string;
  readonly meter?: string;
  readonly controller?: string;
};
