import { type FigureId, measureFirst, type ProgramAdvice, type ProofCheck } from '@brinewright/service';
import { stepWords } from '../drawings/timeline.ts';
import type { Content } from '../markup/element.ts';
import { classed, html } from '../markup/html.ts';
import { small, wordFor } from '../say.ts';
import { nameOfFigure } from './derivation.ts';
import type { Sheet } from './sheet.ts';

/** What is shown, by the name a sentence can use, and the figures it shows. */
export type Shown = { readonly name: string; readonly figures: readonly FigureId[] };

/** Where more than half of the doubt comes from an assumption: what to measure, then what hangs on it. */
export const measureFirstSentences = (sheet: Sheet, shown: readonly Shown[]): readonly string[] => {
  const leanings = measureFirst(
    sheet.assessment.figures,
    shown.flatMap(({ figures }) => figures),
  ).filter(({ assumption }) => !sheet.toMeasure.has(assumption));
  for (const { assumption } of leanings) sheet.toMeasure.add(assumption);
  return leanings.map(({ assumption, figures }) => {
    const names = shown.filter((one) => one.figures.some((id) => figures.includes(id)));
    return sentence(sheet, assumption, names.map(({ name }) => name).join(', '));
  });
};

export const measureFirstLines = (sheet: Sheet, shown: readonly Shown[]): Content => {
  const lines = measureFirstSentences(sheet, shown).map((words) => html('p', {}, words));
  return lines.length === 0 ? undefined : classed('div', 'once', lines);
};

const sentence = (sheet: Sheet, assumption: FigureId, figures: string): string => {
  const own = wordFor(`measure-first.${assumption}`, { figures });
  if (own !== undefined) return sheet.say(own);
  return sheet.word('measure-first.other', { assumption: small(nameOfFigure(sheet, assumption)), figures });
};

export const ofSettings = (sheet: Sheet, { settings, volume }: ProgramAdvice): readonly Shown[] => [
  ...settings.map(({ step, exact, set }) => ({
    name: sheet.word('measure-first.of.step', { step: small(sheet.word(stepWords[step])) }),
    figures: [exact, set],
  })),
  ...(volume === undefined
    ? []
    : [{ name: sheet.word('measure-first.of.volume'), figures: ['program.volume.exact', volume.set] }]),
];

export const ofWindow = (
  sheet: Sheet,
  { floor, ceiling }: { readonly floor: FigureId; readonly ceiling: FigureId },
): readonly Shown[] => [{ name: sheet.word('measure-first.of.window'), figures: [floor, ceiling] }];

export const ofCheck = (sheet: Sheet, { title, predicted, limits }: ProofCheck): Shown => ({
  name: sheet.word('measure-first.of.check', { check: sheet.say(title) }),
  figures: [predicted, limits.lower, limits.upper].filter((id) => id !== undefined),
});
