import type { Figure } from '@brinewright/service';
import type { Text } from '@brinewright/words';
import { stacked } from '../text/lines.ts';
import { table } from '../text/table.ts';
import { figureOf, figureWithSpread, type View, wordOr } from '../view.ts';
import { gapLines, issueLines } from './common.ts';

/** What later stages stand on, in the order a technician thinks of it. */
const shownFigures = [
  'situation.hardness',
  'situation.water.iron',
  'situation.water.manganese',
  'situation.temperature.coldest',
  'situation.temperature.warmest',
  'situation.bed.volume',
  'situation.bed.depth',
  'situation.bed.free',
  'situation.rate.backwash',
  'situation.rate.draw',
  'situation.rate.slow-rinse',
  'situation.rate.fast-rinse',
  'situation.rate.refill',
  'situation.brine.temperature',
  'situation.supply.pressure',
  'situation.supply.flow',
  'situation.drain.carries',
  'situation.demand.daily',
] as const;

export const known = (view: View): string[] => {
  const { situation } = view.assessment.stages;
  const rows = shownFigures.flatMap((id) => {
    const figure = figureOf(view, id);
    return figure === undefined || isAssumed(figure)
      ? []
      : [
          {
            cells: [figureName(view, figure), figureWithSpread(view, figure), howKnown(view, figure)],
          },
        ];
  });
  const body = table([{ title: '' }, { title: '', align: 'right' }, { title: '', gives: true }], rows);
  return stacked(
    rows.length === 0 ? [] : body,
    gapLines(view, situation.gaps),
    issueLines(view, situation.issues),
  );
};

export const isAssumed = ({ by }: Figure): boolean => by.kind === 'given' && by.how === 'assumed';

/** By its own word, by the equation that gives it, or by its id. */
export const figureName = (view: View, { id, by }: Figure): string =>
  readingName(view, id) ??
  wordOr(view, `figure.${id}`, by.kind === 'equation' ? wordOr(view, `equation.${by.key}`, id) : id);

/** A reading is named by the test it comes from. */
const readingName = ({ family, text }: View, id: string): string | undefined => {
  const test = family?.tests.find((one) => id === `reading.${one.id}`);
  return test === undefined ? undefined : text(test.ask);
};

/** Measured, read, told, assumed; from the definition; by an equation; by a rule. */
export const howKnown = (view: View, { by }: Figure): string => {
  switch (by.kind) {
    case 'given':
      return view.word(`papers.known.${by.how}`);
    case 'definition':
      return view.word('cli.how.definition', { of: view.text(by.title ?? titleIn(view, by.of)) });
    case 'equation':
      return view.word('cli.how.equation', { equation: wordOr(view, `equation.${by.key}`, by.key) });
    case 'choice':
      return wordOr(view, `derivation.rule.${by.rule}`, by.rule);
  }
};

/** A control or an injector by its own words. */
const titleIn = ({ family }: View, id: string): Text => {
  const { controls, injectors } = family ?? {};
  const known = [...(controls?.drain ?? []), ...(controls?.refill ?? []), ...(injectors ?? [])];
  return known.find((one) => one.id === id)?.title ?? id;
};
