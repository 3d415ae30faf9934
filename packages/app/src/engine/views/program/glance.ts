import { alike, quantityAt, type Sheet } from '@brinewright/papers';
import type { FigureId, ProgramAdvice } from '@brinewright/service';
import { type FigureView, figureView } from '../figure-view.ts';

/** One of the few figures that say what a program comes to, beside what it was. */
export type GlanceView = {
  readonly label: string;
  readonly set: FigureView;
  readonly found?: string | undefined;
};

/** Salt each time, how long it lasts, how well it rinses, what it costs. */
export const glance = (sheet: Sheet, { days }: ProgramAdvice): readonly GlanceView[] =>
  [
    pair(sheet, sheet.word('app.program.salt-each'), 'program.as-set.salt', 'program.found.salt'),
    pair(
      sheet,
      sheet.word('app.program.lasts'),
      days?.expected ?? days?.set,
      days?.expected === undefined ? days?.found : 'program.found.days',
    ),
    pair(
      sheet,
      sheet.word('app.program.rinsed'),
      'program.as-set.slow-rinse.bed-volumes',
      'program.found.slow-rinse.bed-volumes',
    ),
    pair(sheet, sheet.word('app.program.year'), 'program.as-set.cost-year', 'program.found.cost-year'),
  ].filter((one) => one !== undefined);

const pair = (
  sheet: Sheet,
  label: string,
  set: FigureId | undefined,
  found: FigureId | undefined,
): GlanceView | undefined => {
  const [asSet, asFound] = alike(sheet, [set, found]);
  const figure = figureView(sheet, set, { name: label, text: asSet });
  return figure === undefined || quantityAt(sheet, set)?.si === 0
    ? undefined
    : { label, set: figure, found: asFound };
};
