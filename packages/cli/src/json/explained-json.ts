import { sources } from '@brinewright/physics';
import type { Explained } from '@brinewright/service';
import { symbolOr, type View, wordOr } from '../view.ts';

/** A derivation as data, with the formula in words. */
export const explainedJson = (view: View, { figure, name, inputs, again }: Explained): object => {
  const { id, quantity, u, by, source, issues } = figure;
  return {
    id,
    ...(name === undefined ? {} : { name, called: symbolOr(view, name, name) }),
    quantity,
    shown: view.quantity(quantity),
    ...(u === undefined ? {} : { u }),
    by,
    ...(by.kind === 'equation' ? { formula: wordOr(view, `formula.${by.key}`, by.key) } : {}),
    source: sources[source],
    issues: issues.map((issue) => view.say(issue.message)),
    ...(again ? { again } : {}),
    inputs: inputs.map((input) => explainedJson(view, input)),
  };
};
