import type { QuantityKind } from './kinds.ts';

type What =
  | { readonly what: 'no-number' }
  | { readonly what: 'missing-unit' }
  | { readonly what: 'unknown-unit'; readonly unit: string }
  | { readonly what: 'wrong-kind'; readonly unit: string; readonly measures: readonly QuantityKind[] }
  | { readonly what: 'decimal-comma'; readonly mended: string }
  | { readonly what: 'not-finite' }
  | { readonly what: 'negative' }
  | { readonly what: 'not-a-range'; readonly example: string }
  | { readonly what: 'range-upside-down'; readonly mended: string }
  | { readonly what: 'zero-step' };

/** Why a text is no quantity, or no range, of the kind asked for. */
export type QuantityProblem = What & {
  readonly kind: QuantityKind;
  readonly text: string;
  /** Symbols that may be written; empty where a plain number is wanted. */
  readonly units: readonly string[];
};

export type QuantityProblemName = QuantityProblem['what'];
export type ProblemDetail = What;
