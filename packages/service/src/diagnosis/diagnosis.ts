import type { DiagnosisTest, Fault } from '@brinewright/equipment';
import type { Message } from '@brinewright/words';

/** 'none-of-these' is always a hypothesis. */
export const noneOfThese = 'none-of-these';

export type FaultOdds = {
  readonly fault: string;
  /** Odds from 0 to 1; shown to the nearest 5 % while they rest on stated odds. */
  readonly p: number;
  /** Before the last reading. */
  readonly before: number;
  readonly word: 'likely' | 'possible' | 'unlikely';
  readonly definition?: Fault;
  /** Seals of this family's bore that carry the fault, where it is a leak. */
  readonly seals: readonly number[];
  readonly speaksFor: readonly Message[];
  readonly speaksAgainst: readonly Message[];
};

/** Faults with the same repair: they need not be told apart. */
export type ActionGroup = {
  readonly key: string;
  readonly faults: readonly string[];
  /** Those of them likely enough to be named, the likeliest first; never empty. */
  readonly named: readonly string[];
  readonly p: number;
};

export type NextTest = {
  readonly test: DiagnosisTest;
  readonly bits: number;
  readonly minutes: number;
  /** Operations that must come off first. */
  readonly opens: readonly string[];
  readonly perMinute: number;
  readonly outcomes: readonly { readonly outcome: string; readonly p: number; readonly leads: string }[];
  /** Runs by itself; the tests named can be done meanwhile. */
  readonly meanwhile: readonly string[];
};

export type Diagnosis = {
  readonly odds: readonly FaultOdds[];
  readonly groups: readonly ActionGroup[];
  readonly next: readonly NextTest[];
  /** What the first place of the list stands on. */
  readonly standsOn: 'measured' | 'stated-odds' | 'told';
  /** The leading group, once it is clear enough to act on (p ≥ 0.8 or nothing left to test). */
  readonly act?: ActionGroup;
  /** First question when it has not been answered: what changed, who worked on it last. */
  readonly askFirst: readonly Message[];
  readonly says: Message;
};
