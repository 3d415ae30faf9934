import type { QuantityKind } from '@brinewright/units';
import type { MessageKey } from '@brinewright/words';
import type { SourceKey } from './sources.ts';

/** One variable of an equation: the textbook's letter and what it measures. Its name is the catalogue's `symbol.<key>`. */
export type Variable = { readonly symbol: string; readonly kind: QuantityKind };

/** A limit within which the source tested the equation, on an input, an output or a named group such as Re. */
export type RangeRule<I extends string = string, O extends string = string> = {
  readonly of: MessageKey;
  readonly kind: QuantityKind;
  readonly min?: number;
  readonly max?: number;
  readonly value: (inputs: Readonly<Record<I, number>>, outputs: Readonly<Record<O, number>>) => number;
};

/** How the statement of an equation or value was met. Only 'seen' and 'second-hand' count as evidence. */
export type SourceStatus = 'seen' | 'second-hand' | 'memory' | 'common-practice' | 'ours';

export type EquationMeta<I extends string, O extends string> = {
  /** Permanent id: `lab run <key>`, derivations and the table of equations use it. */
  readonly key: string;
  /** Catalogue keys: a short title, and the formula in plain words. */
  readonly title: MessageKey;
  readonly words: MessageKey;
  readonly inputs: Readonly<Record<I, Variable>>;
  readonly outputs: Readonly<Record<O, Variable>>;
  /** Names come from `inputs` and `outputs` alone: a rule on one of them must not narrow the others away. */
  readonly range: readonly RangeRule<NoInfer<I>, NoInfer<O>>[];
  readonly source: SourceKey;
  readonly status: SourceStatus;
};

/**
 * A plain function with its meta beside it. `compute` takes and gives SI numbers and throws RangeError only on
 * programming mistakes (NaN, negative length). It judges no range: `evaluate` in `service` does.
 */
export type Equation<I extends string = string, O extends string = string> = {
  readonly meta: EquationMeta<I, O>;
  readonly compute: (inputs: Readonly<Record<I, number>>) => Readonly<Record<O, number>>;
};

export const equation = <I extends string, O extends string>(
  meta: EquationMeta<I, O>,
  compute: (inputs: Readonly<Record<NoInfer<I>, number>>) => Readonly<Record<NoInfer<O>, number>>,
): Equation<I, O> => ({ meta, compute });
