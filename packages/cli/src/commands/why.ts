import { explain } from '@brinewright/service';
import { message } from '@brinewright/words';
import { type Call, misused, print, printJson } from '../call.ts';
import { exit } from '../exit.ts';
import { explainedJson } from '../json/explained-json.ts';
import { derivationText } from '../report/derivation.ts';
import type { View } from '../view.ts';

const mostNamed = 24;

/** Where one figure comes from; a part of an id names the figures that hold it. */
export const whyCommand = (call: Call, view: View, id: string): number => {
  const { figures } = view.assessment;
  const tree = explain(figures, id);
  if (tree === undefined) return noFigure(call, Object.keys(figures), id);
  if (call.json) printJson(call, explainedJson(view, tree));
  else print(call, derivationText(view, tree));
  return exit.fine;
};

const noFigure = (call: Call, known: readonly string[], id: string): number => {
  const near = known.filter((one) => one.includes(id)).toSorted();
  if (near.length === 0)
    return misused(call, message('cli.no-figure', { id }), message('cli.no-figure-mend'));
  const named = near.slice(0, mostNamed).join(', ');
  return misused(
    call,
    message('cli.no-figure', { id }),
    message('cli.no-figure-near', { figures: near.length > mostNamed ? `${named} …` : named }),
  );
};
