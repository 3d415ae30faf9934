import type { Quantity, QuantityKind } from '@brinewright/units';
import type { Text } from '@brinewright/words';
import type { Port } from './bore.ts';
import type { Fits } from './feature.ts';
import type { WorkState } from './operation.ts';

/** Stated odds in words: 0.97, 0.8, 0.4, 0.05. Common practice until physics replaces them. */
export const strengths = { sure: 0.97, likely: 0.8, possible: 0.4, hardly: 0.05 } as const;
export type Strength = keyof typeof strengths;

export type ConditionerKind = 'softener' | 'filter';

export type Fault = {
  readonly id: string;
  readonly title: Text;
  /** What it does to the water, in a sentence. */
  readonly explains: Text;
  /** What mends it, as an order. */
  readonly mend: Text;
  readonly where: 'valve' | 'brine' | 'drain' | 'control' | 'bed' | 'supply' | 'outside' | 'after-service';
  /** Relative to the other faults. */
  readonly odds: number;
  readonly kinds: readonly ConditionerKind[];
  readonly fits: Fits;
  /** Two ports that leak into one another: the seals that part them in this family's bore carry the fault. */
  readonly path?: readonly [Port, Port];
  /** Raised for about two months after somebody worked on the unit. */
  readonly afterService: boolean;
  /** What is replaced (roles), done (operations) or set anew. Faults with the same repair need not be told apart. */
  readonly repair: {
    readonly replace: readonly string[];
    readonly do: readonly string[];
    readonly settings: boolean;
  };
};

/** One result of a test. Bands of a reading are in SI, or in shares of the expected figure. */
export type Outcome = {
  readonly id: string;
  readonly title: Text;
  readonly from?: number;
  readonly to?: number;
  readonly faults: Readonly<Record<string, Strength>>;
};

export type DiagnosisTest = {
  readonly id: string;
  readonly ask: Text;
  readonly how: readonly Text[];
  /** Absent: something looked at, answered by an outcome's id. */
  readonly reading?: {
    readonly kind: QuantityKind;
    readonly u: Quantity;
    /** Figure id of the expected value that the bands are shares of; absent: bands are in SI. */
    readonly of?: string;
    readonly plausible: { readonly min: Quantity; readonly max: Quantity };
  };
  readonly outcomes: readonly Outcome[];
  /** The outcome of a sound unit. */
  readonly normal: string;
  readonly minutes: { readonly hands: number; readonly waiting: number };
  readonly needs: WorkState;
  readonly after: readonly string[];
  readonly tools: readonly string[];
  readonly hazards: readonly string[];
  readonly kinds: readonly ConditionerKind[];
  readonly fits: Fits;
};

/** What customers say; weak evidence. `words` are looked for in their own sentence. */
export type ComplaintDefinition = {
  readonly id: string;
  readonly title: Text;
  readonly words: { readonly en: readonly string[]; readonly es: readonly string[] };
  readonly faults: Readonly<Record<string, Strength>>;
};

/** What may have changed since it last worked, and the faults it raises (a factor on their odds). */
export type ChangeDefinition = {
  readonly id: string;
  readonly title: Text;
  readonly words: { readonly en: readonly string[]; readonly es: readonly string[] };
  readonly raises: Readonly<Record<string, number>>;
};

/** A caution after ANSI Z535.4 signal words: what threatens, what it does, what to do, the fact that shows it done. */
export type CautionDefinition = {
  readonly id: string;
  readonly signal: 'danger' | 'warning' | 'caution' | 'notice';
  readonly title: Text;
  readonly does: Text;
  readonly act: readonly Text[];
  /** What is seen when it is done; a caution with a fact is acknowledged by it. */
  readonly fact?: Text;
  /** Shown with every visit of this kind, or only where an operation, test or setting names it. */
  readonly always: readonly ConditionerKind[];
};
