import type { Equation } from '@brinewright/physics';
import type { Quantity } from '@brinewright/units';
import type { Issue } from '@brinewright/words';
import type { Figure } from './figure.ts';
import { openLedger } from './ledger.ts';

export type Evaluated = {
  /** By output; empty where the equation cannot take these inputs, and an issue says so. */
  readonly outputs: Readonly<Record<string, Figure>>;
  readonly issues: readonly Issue[];
};

const inputId = (name: string): string => `input.${name}`;
const outputId = (name: string): string => `output.${name}`;

/**
 * One equation by itself, with its range judged as in any derivation. Every input of the equation must be there.
 *
 * @throws Error where an input is missing (programming mistake).
 */
export const evaluate = (equation: Equation, inputs: Readonly<Record<string, Quantity>>): Evaluated => {
  const { meta } = equation;
  const ledger = openLedger();
  for (const name of Object.keys(meta.inputs)) {
    const value = inputs[name];
    if (value === undefined) throw new Error(`no input ${name}`);
    ledger.given(inputId(name), { value, how: 'told' });
  }
  ledger.derive(equation, idsOf(meta.inputs, inputId), idsOf(meta.outputs, outputId));
  const figures = ledger.figures();
  const outputs = Object.keys(meta.outputs).flatMap((name): [string, Figure][] => {
    const figure = figures[outputId(name)];
    return figure === undefined ? [] : [[name, figure]];
  });
  return { outputs: Object.fromEntries(outputs), issues: distinct(ledger.issues()) };
};

const idsOf = (
  names: Readonly<Record<string, unknown>>,
  idOf: (name: string) => string,
): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.keys(names).map((name) => [name, idOf(name)]));

/** Several outputs of one equation leave its range together. */
const distinct = (issues: readonly Issue[]): readonly Issue[] =>
  issues.filter((issue, place) => issues.findIndex((one) => sameWords(one, issue)) === place);

const sameWords = (a: Issue, b: Issue): boolean =>
  a.code === b.code && JSON.stringify(a.message) === JSON.stringify(b.message);
