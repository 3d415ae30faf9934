import type { Figure } from '@brinewright/service';
import type { Content, Markup } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { doubtText, figure, nameOfFigure, sourceName } from './derivation.ts';
import { section, table } from './parts.ts';
import type { Sheet } from './sheet.ts';

/** Limits of checks and doses shown for comparison stand in their own tables. */
const hasOwnTable = ({ id }: Figure): boolean =>
  /^program\.(?:dose-\d+|rule\.sphere)\./u.test(id) || /^proof\..*\.upper$/u.test(id);

/** What holds by definition needs nobody's measurement. */
const isAssumed = ({ by, source }: Figure): boolean =>
  by.kind === 'given' && by.how === 'assumed' && source !== 'definition';

const assumptions = ({ assessment }: Sheet): readonly Figure[] =>
  Object.values(assessment.figures)
    .filter((one) => isAssumed(one) && !hasOwnTable(one))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));

const shownWithDoubt = (sheet: Sheet, one: Figure): Content => {
  const u = doubtText(sheet, one);
  return [figure(sheet, one.id), u === undefined ? undefined : html('span', { class: 'second' }, ` ± ${u}`)];
};

const bySource = (sheet: Sheet, source: string, figures: readonly Figure[]): Markup =>
  classed(
    'div',
    'assumed',
    table(
      [{ title: source }, { title: '', num: true }],
      figures.map((one) => ({ cells: [nameOfFigure(sheet, one.id), shownWithDoubt(sheet, one)] })),
    ),
  );

/** Everything that nobody measured, read or told, with where its value comes from. */
export const assumedSection = (sheet: Sheet): Markup | undefined => {
  const figures = assumptions(sheet);
  if (figures.length === 0) return undefined;
  const groups = Map.groupBy(figures, (one) => sourceName(sheet, one.source));
  return section(
    sheet.word('cli.assumed'),
    undefined,
    html('p', { class: 'second' }, sheet.word('cli.assumed.why')),
    classed(
      'div',
      'columns',
      [...groups].map(([source, of]) => bySource(sheet, source, of)),
    ),
  );
};
