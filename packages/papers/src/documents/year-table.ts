import type { ProgramAdvice, YearlyDifference } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import type { Content } from '../markup/element.ts';
import { html } from '../markup/html.ts';
import { figure } from './derivation.ts';
import { alike } from './figure-values.ts';
import { type Row, table } from './parts.ts';
import type { Sheet } from './sheet.ts';

export const yearWords: Readonly<Record<YearlyDifference['what'], MessageKey>> = {
  salt: 'papers.year.salt',
  water: 'papers.year.water',
  money: 'papers.year.money',
};

const yearRow = (sheet: Sheet, { what, found, set, difference }: YearlyDifference): Row => {
  const [asFound, asSet, saved] = alike(sheet, [found, set, difference]);
  return {
    of: what === 'money' ? 'sum' : undefined,
    cells: [
      sheet.word(yearWords[what]),
      figure(sheet, found, undefined, undefined, asFound),
      figure(sheet, set, undefined, 'set-value', asSet),
    ],
    under: html(
      'span',
      { class: 'side' },
      `${sheet.word('papers.difference')} `,
      figure(sheet, difference, undefined, undefined, saved),
    ),
  };
};

/** A found cost that looks low may buy hard water part of the time: then the two are not the same ware. */
export const runsHard = ({ notes }: ProgramAdvice): boolean =>
  notes.some(({ key }) => key === 'program.found-hard-early');

export const yearTable = (sheet: Sheet, advice: ProgramAdvice): Content =>
  advice.year.length === 0
    ? undefined
    : [
        html('h3', {}, sheet.word('papers.year')),
        table(
          [
            { title: '' },
            { title: sheet.word('papers.as-found'), num: true },
            { title: sheet.word('papers.as-set'), num: true },
          ],
          advice.year.map((one) => yearRow(sheet, one)),
          'year',
        ),
        runsHard(advice) ? html('p', { class: 'doubt' }, sheet.word('papers.year.runs-hard')) : undefined,
      ];
