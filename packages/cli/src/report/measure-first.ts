import { type FigureId, measureFirst, type ProgramAdvice, type ProofCheck } from '@brinewright/service';
import { paragraph } from '../text/lines.ts';
import { figureOf, isMessageKey, type View } from '../view.ts';
import { figureName } from './known.ts';

/** What is printed, by the name a sentence can use, and the figures it shows. */
export type Printed = { readonly name: string; readonly figures: readonly FigureId[] };

/** Where more than half of the doubt comes from an assumption: what to measure, then what hangs on it. */
export const measureFirstLines = (
  view: View,
  printed: readonly Printed[],
  said: ReadonlySet<FigureId> = new Set(),
): string[] =>
  leanings(view, printed)
    .filter(({ assumption }) => !said.has(assumption))
    .flatMap(({ assumption, names }) => paragraph(sentence(view, assumption, names.join(', '))));

/** What the program names as to be measured first; once is enough. */
export const measureFirstInProgram = (view: View): ReadonlySet<FigureId> => {
  const { program } = view.assessment.stages;
  if (program.state !== 'done') return new Set();
  const printed = [...ofSettings(view, program.value), ...ofWindow(view, program.value)];
  return new Set(leanings(view, printed).map(({ assumption }) => assumption));
};

const leanings = (view: View, printed: readonly Printed[]) =>
  measureFirst(
    view.assessment.figures,
    printed.flatMap(({ figures }) => figures),
  ).map(({ assumption, figures }) => ({
    assumption,
    names: printed.filter((one) => one.figures.some((id) => figures.includes(id))).map(({ name }) => name),
  }));

const sentence = (view: View, assumption: FigureId, figures: string): string => {
  const own = `measure-first.${assumption}`;
  if (isMessageKey(own)) return view.word(own, { figures });
  const figure = figureOf(view, assumption);
  const name = figure === undefined ? assumption : small(figureName(view, figure));
  return view.word('measure-first.other', { assumption: name, figures });
};

const small = (text: string): string => text.slice(0, 1).toLowerCase() + text.slice(1);

export const ofSettings = (view: View, { settings, volume }: ProgramAdvice): readonly Printed[] => [
  ...settings.map(({ step, exact, set }) => ({
    name: view.word('measure-first.of.step', { step: small(view.word(`program.step.${step}`)) }),
    figures: [exact, set],
  })),
  ...(volume === undefined
    ? []
    : [{ name: view.word('measure-first.of.volume'), figures: ['program.volume.exact', volume.set] }]),
];

export const ofWindow = (view: View, { window }: ProgramAdvice): readonly Printed[] =>
  window === undefined
    ? []
    : [{ name: view.word('measure-first.of.window'), figures: [window.floor, window.ceiling] }];

export const ofCheck = (view: View, { title, predicted, limits }: ProofCheck): Printed => ({
  name: view.word('measure-first.of.check', { check: view.say(title) }),
  figures: [predicted, limits.lower, limits.upper].filter((id) => id !== undefined),
});
