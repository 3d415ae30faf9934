import { sources } from '@brinewright/physics';
import type { Figure } from '@brinewright/service';
import { capital, indented, paragraph, stacked } from '../text/lines.ts';
import { type Column, table } from '../text/table.ts';
import { columns } from '../text/wrap.ts';
import { figureWithSpread, type Speech, type View, wordOr } from '../view.ts';
import { figureName, isAssumed } from './known.ts';

/**
 * Every figure that nobody measured, read or told, with where its value comes from. Limits of checks and doses shown
 * for comparison stand in their own tables; constants of an equation are no assumptions.
 */
export const assumed = (view: View): string[] => {
  const figures = Object.values(view.assessment.figures).filter(
    (figure) => isAssumed(figure) && isPlain(figure),
  );
  if (figures.length === 0) return [];
  const bySource = Map.groupBy(
    figures.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
    ({ source }) => source,
  );
  return stacked(
    paragraph(view.word('cli.assumed.why')),
    ...[...bySource].map(([source, of]) => [
      ...paragraph(`${capital(sourceText(view, source))}:`),
      ...indented(
        table(
          columnsOf,
          of.map((figure) => ({ cells: rowOf(view, figure) })),
          columns - 2,
        ),
      ),
    ]),
  );
};

const columnsOf: readonly Column[] = [{ title: '' }, { title: '', align: 'right' }];

const rowOf = (view: View, figure: Figure): string[] => [
  figureName(view, figure),
  figureWithSpread(view, figure),
];

const isPlain = ({ id }: Figure): boolean =>
  !/^program\.(?:dose-\d+|rule\.sphere)\./u.test(id) && !/^proof\..*\.upper$/u.test(id);

/** What a value rests on, in the reader's words where it is no publication. */
export const sourceText = (speech: Speech, key: Figure['source']): string =>
  wordOr(speech, `cli.source.${key}`, sources[key].cite);
