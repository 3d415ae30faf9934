import type { QuantityKind } from '@brinewright/units';
import type { MessageKey } from '@brinewright/words';
import type { RangeRule } from './equation.ts';

/** The commonest rule: an input itself stays between the limits its source gives. */
export const inputWithin = <I extends string>(
  input: I,
  of: MessageKey,
  kind: QuantityKind,
  limits: { readonly min?: number; readonly max?: number },
): RangeRule<I, string> => ({ of, kind, ...limits, value: (inputs) => inputs[input] });
