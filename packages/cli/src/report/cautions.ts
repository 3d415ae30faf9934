import type { AppliedCaution } from '@brinewright/service';
import { hanging } from '../text/lines.ts';
import type { View } from '../view.ts';

/** The gravest first, each with what threatens, what it does, what to do and the fact that shows it done. */
export const cautions = (view: View): string[] =>
  view.assessment.cautions.flatMap((applied) => cautionLines(view, applied));

const cautionLines = (view: View, { caution, acknowledged }: AppliedCaution): string[] => {
  const found = view.family?.cautions.find(({ id }) => id === caution);
  if (found === undefined) return [];
  const { signal, title, does, act, fact } = found;
  const head = `${view.word(`cli.signal.${signal}`)}: ${view.text(title)}.`;
  if (acknowledged) return hanging('', `${head} ${view.word('cli.caution.acknowledged')}`);
  const seen = fact === undefined ? '' : ` ${view.word('cli.caution.fact', { fact: view.text(fact) })}`;
  return [
    ...hanging('', `${head} ${view.text(does)}`),
    ...hanging('', `${act.map(view.text).join('. ')}.${seen}`, 4),
  ];
};
