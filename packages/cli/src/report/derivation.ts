import type { Explained, Figure } from '@brinewright/service';
import { capital, hanging, stacked } from '../text/lines.ts';
import { figureWithSpread, symbolOr, type View, wordOr } from '../view.ts';
import { sourceText } from './assumed.ts';
import { figureName, howKnown } from './known.ts';

/** The tree from a figure down to what was measured, told, defined or assumed. */
export const derivationText = (view: View, tree: Explained): string[] =>
  stacked(node(view, tree, 0), hanging('', tree.figure.id));

const node = (view: View, { figure, name, inputs, again }: Explained, depth: number): string[] => {
  const indent = depth * 2;
  const title =
    name === undefined ? figureName(view, figure) : symbolOr(view, name, figureName(view, figure));
  const head = `${capital(title)}: ${figureWithSpread(view, figure)}`;
  return [
    ...hanging(
      depth === 0 ? '' : '- ',
      `${head}. ${originText(view, figure, again)}`,
      Math.max(0, indent - 2),
    ),
    ...figure.issues.flatMap((issue) => hanging('! ', view.say(issue.message), indent)),
    ...inputs.flatMap((input) => node(view, input, depth + 1)),
  ];
};

/** Formula in words with its source, the rule of a choice, or how it is known. */
const originText = (view: View, figure: Figure, again: boolean): string => {
  const { by, source } = figure;
  if (again) return view.word('cli.why.again');
  switch (by.kind) {
    case 'given':
      return by.how === 'assumed'
        ? view.word('cli.why.assumed', { source: sourceText(view, source) })
        : `${capital(view.word(`papers.known.${by.how}`))}.`;
    case 'definition':
      return `${capital(howKnown(view, figure))}.`;
    case 'equation':
      return view.word('cli.why.formula', {
        formula: wordOr(view, `formula.${by.key}`, by.key),
        source: sourceText(view, source),
      });
    case 'choice':
      return view.word('cli.why.choice', {
        rule: capital(wordOr(view, `derivation.rule.${by.rule}`, by.rule)),
        source: sourceText(view, source),
      });
  }
};
