import type { SourceKey } from '@brinewright/physics';
import type { Quantity } from '@brinewright/units';
import type { Issue, Text } from '@brinewright/words';
import type { HowKnown } from '../visit/codec.ts';

/** Fixed ids, so that report, app and tests address one figure: 'program.refill.time'. */
export type FigureId = string;

/** Where a figure comes from. Inputs by id make the tree that a reader opens. */
export type FigureOrigin =
  | { readonly kind: 'given'; readonly how: HowKnown }
  | { readonly kind: 'definition'; readonly of: string; readonly title?: Text }
  | { readonly kind: 'equation'; readonly key: string }
  | { readonly kind: 'choice'; readonly rule: string };

export type Figure = {
  readonly id: FigureId;
  readonly quantity: Quantity;
  /** Combined standard uncertainty in SI, where anything is known of it. */
  readonly u?: number;
  /** What each root input adds to it, signed: root figure to its share of the change. u² is their sum of squares. */
  readonly spread?: Readonly<Record<FigureId, number>>;
  readonly by: FigureOrigin;
  readonly inputs: Readonly<Record<string, FigureId>>;
  readonly source: SourceKey;
  readonly issues: readonly Issue[];
};

export type Figures = Readonly<Record<FigureId, Figure>>;
