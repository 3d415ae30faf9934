import type { FigureId, ProofCheck } from '@brinewright/service';
import { capital, paragraph, stacked } from '../text/lines.ts';
import { type Row, table } from '../text/table.ts';
import { figureOf, figureWithSpread, rangeShown, shown, sureness, type View } from '../view.ts';
import { staged } from './common.ts';
import { measureFirstLines, ofCheck } from './measure-first.ts';

/** `said` are the assumptions that the program has named already. */
export const proof = (view: View, said: ReadonlySet<FigureId> = new Set()): string[] =>
  staged(view, view.assessment.stages.proof, ({ says, checks }) =>
    stacked(
      paragraph(view.say(says)),
      measureFirstLines(
        view,
        checks.map((check) => ofCheck(view, check)),
        said,
      ),
      part(
        view,
        'papers.check.now',
        checks.filter(({ when }) => when === 'now'),
      ),
      part(
        view,
        'papers.check.tomorrow',
        checks.filter(({ when }) => when === 'tomorrow'),
      ),
    ),
  );

const part = (
  view: View,
  title: 'papers.check.now' | 'papers.check.tomorrow',
  checks: readonly ProofCheck[],
): string[] => {
  if (checks.length === 0) return [];
  return table(
    [
      { title: view.word(title), gives: true },
      { title: capital(view.word('papers.must-be')) },
      { title: view.word('cli.proof.predicted'), align: 'right' },
      { title: capital(view.word('papers.read')), align: 'right' },
      { title: capital(view.word('papers.verdict')) },
    ],
    checks.map((check) => checkRow(view, check)),
  );
};

const checkRow = (view: View, { title, limits, predicted, reading, verdict, p, decide }: ProofCheck): Row => {
  const read = figureOf(view, reading);
  const sure = p === undefined ? '' : ` (${sureness(view, p)})`;
  return {
    cells: [
      view.say(title),
      limitText(view, limits),
      predicted === undefined ? '' : shown(view, predicted),
      read === undefined ? '' : figureWithSpread(view, read),
      view.word(`papers.verdict.${verdict}`) + sure,
    ],
    under: decide === undefined ? [] : [view.say(decide)],
  };
};

const limitText = (view: View, { lower, upper }: ProofCheck['limits']): string => {
  if (lower !== undefined && upper !== undefined)
    return view.word('cli.proof.within', rangeShown(view, lower, upper));
  if (upper !== undefined) return view.word('cli.proof.at-most', { upper: shown(view, upper) });
  return lower === undefined
    ? view.word('papers.must-be.seen')
    : view.word('cli.proof.at-least', { lower: shown(view, lower) });
};
