import type { Quantity } from '@brinewright/units';
import type { Text } from '@brinewright/words';
import type { Fits } from './feature.ts';

type TellBase = {
  readonly id: string;
  readonly ask: Text;
  readonly how?: Text;
  /** Probability that the answer is right. */
  readonly trust: number;
  readonly minutes: number;
  /** Operations that must be done before it can be seen. */
  readonly after: readonly string[];
};

export type TellAnswerOption = { readonly id: string; readonly title: Text; readonly allows: Fits };

/** Something seen: each answer names the feature values it goes with. */
export type SeenTell = TellBase & { readonly kind: 'seen'; readonly answers: readonly TellAnswerOption[] };

/** Something measured: per value of one feature the size that would be found. */
export type MeasuredTell = TellBase & {
  readonly kind: 'measured';
  readonly feature: string;
  readonly u: Quantity;
  readonly expected: Readonly<Record<string, Quantity>>;
};

export type Tell = SeenTell | MeasuredTell;
