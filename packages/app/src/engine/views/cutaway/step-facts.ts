import { figureText, quantityAt, regenerationSteps, type Sheet, timeline } from '@brinewright/papers';
import type { FigureId } from '@brinewright/service';
import { drawnAt } from '../figure-view.ts';
import type { CutStop } from './address.ts';

/** What a step takes and moves, as the program has it. */
export type StepFact = { readonly label: string; readonly value: string };

type Line = readonly [
  label: 'app.cutaway.takes' | 'app.cutaway.flows' | 'app.cutaway.moves',
  figure: FigureId,
];

const lines: Readonly<Record<CutStop, readonly Line[]>> = {
  service: [],
  backwash: [
    ['app.cutaway.takes', 'program.set.backwash'],
    ['app.cutaway.flows', 'situation.rate.backwash'],
    ['app.cutaway.moves', 'program.as-set.water.backwash'],
  ],
  brine: [
    ['app.cutaway.takes', 'program.as-set.draw.really'],
    ['app.cutaway.flows', 'situation.rate.draw'],
    ['app.cutaway.moves', 'program.as-set.brine.drawn'],
  ],
  'slow-rinse': [
    ['app.cutaway.takes', 'program.as-set.slow-rinse.left'],
    ['app.cutaway.flows', 'situation.rate.slow-rinse'],
    ['app.cutaway.moves', 'program.as-set.water.slow-rinse'],
  ],
  'fast-rinse': [
    ['app.cutaway.takes', 'program.set.fast-rinse'],
    ['app.cutaway.flows', 'situation.rate.fast-rinse'],
    ['app.cutaway.moves', 'program.as-set.water.fast-rinse'],
  ],
  refill: [
    ['app.cutaway.takes', 'program.set.refill'],
    ['app.cutaway.flows', 'situation.rate.refill'],
    ['app.cutaway.moves', 'program.as-set.refill.water'],
  ],
};

export const stepFacts = (sheet: Sheet, stop: CutStop): readonly StepFact[] =>
  lines[stop].flatMap(([label, figure]) =>
    quantityAt(sheet, figure) === undefined
      ? []
      : [{ label: sheet.word(label), value: figureText(sheet, figure) }],
  );

/** The regeneration with the step in hand marked; nothing before there is a program. */
export const stepTimelines = (
  sheet: Sheet,
  stop: CutStop,
  widths: readonly number[],
):
  | {
      readonly drawings: readonly { readonly width: number; readonly svg: string }[];
      readonly twin: readonly string[];
    }
  | undefined => {
  const { program } = sheet.assessment.stages;
  const steps = program.state === 'done' ? regenerationSteps(sheet, program.value) : [];
  if (steps.length === 0) return undefined;
  const now = steps.some(({ step }) => step === stopStep(stop)) ? stopStep(stop) : undefined;
  const drawn = widths.map((width) => ({
    width,
    ...drawnAt(sheet, `run-${width}`, width, (options) => timeline(steps, { ...options, now })),
  }));
  return { drawings: drawn.map(({ width, svg }) => ({ width, svg })), twin: drawn[0]?.twin ?? [] };
};

const stopStep = (stop: CutStop) => {
  if (stop === 'service') return undefined;
  return stop === 'brine' ? 'draw' : stop;
};
