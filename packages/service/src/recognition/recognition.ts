import type { Fits, Tell, Variant } from '@brinewright/equipment';
import type { Message } from '@brinewright/words';

/** Odds over the variants of a family, in the order of the variant space; they sum to 1. */
export type Belief = { readonly odds: Float64Array | readonly number[] };

/** What one answer says of each variant, in the order of the variant space. */
export type Likelihood = Float64Array | readonly number[];

/** Enumerated now; the type lets a factored one take its place. */
export type VariantSpace = {
  readonly variants: readonly Variant[];
  weights(evidence: readonly Likelihood[]): Belief;
  /**
   * Variants not ruled out: what was seen speaks for them at least a twentieth as well as for the best, or they hold
   * a twentieth of the odds.
   */
  remaining(belief: Belief): readonly number[];
  count(belief: Belief): number;
  top(belief: Belief, n: number): readonly { readonly variant: Variant; readonly p: number }[];
  marginal(belief: Belief, of: (variant: Variant) => string): ReadonlyMap<string, number>;
};

/** Something that matters for today's work: parts of a role, an operation, the settings. */
export type Target =
  | { readonly kind: 'replace'; readonly role: string }
  | { readonly kind: 'operation'; readonly operation: string }
  | { readonly kind: 'settings' }
  | { readonly kind: 'convert'; readonly feature: string; readonly to: string };

/** Minutes of hands it takes to get these operations done and undone, beyond what is apart already. */
export type Access = (operations: readonly string[]) => number;

export type NextTell = {
  readonly tell: Tell;
  /** Bits about the decision, and per minute counting what must come off. */
  readonly worth: number;
  readonly minutes: number;
  readonly perMinute: number;
  /** For each answer: how likely it is, and how many groups it leaves. */
  readonly leaves: readonly { readonly answer: string; readonly p: number; readonly groups: number }[];
};

/** An answer that may be wrong, or a feature that was told or read from papers. */
export type Doubt =
  | { readonly from: 'tell'; readonly tell: string; readonly answer: string }
  | { readonly from: 'told'; readonly feature: string; readonly answer: string };

/** Answers that disagree: the fewest to doubt, and the field conversions that would explain them. */
export type Contradiction = {
  readonly doubt: readonly Doubt[];
  readonly conversions: readonly { readonly feature: string; readonly from: string; readonly to: string }[];
};

export type Recognition = {
  /** Nothing to tell apart: one variant, or a make nobody described. */
  readonly single: boolean;
  readonly belief: Belief;
  readonly remaining: number;
  readonly top: readonly { readonly variant: Variant; readonly p: number }[];
  /** Feature by feature: what is settled (p ≥ 0.95) and what is open. */
  readonly features: readonly {
    readonly feature: string;
    readonly settled?: string;
    readonly odds: readonly { readonly value: string; readonly p: number }[];
  }[];
  /** Groups of variants that lead to the same parts, tools and settings for the targets. */
  readonly groups: readonly { readonly signature: string; readonly p: number; readonly fits: Fits }[];
  /** The leading group holds 95 %, or there is nothing to tell apart. */
  readonly decided: boolean;
  readonly next: readonly NextTell[];
  readonly contradiction?: Contradiction;
  /** One sentence on why it can stop, or what is still to be told apart. */
  readonly why: Message;
};
