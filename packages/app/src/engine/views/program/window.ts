import {
  backwashWindow,
  bedDrawing,
  bedOf,
  isOfWindow,
  limitOf,
  measureFirstSentences,
  ofWindow,
  type Sheet,
  windowFlows,
} from '@brinewright/papers';
import type { BackwashWindow, ProgramAdvice } from '@brinewright/service';
import { type FigureView, figureView, type Pictures, pictures } from '../figure-view.ts';

/** Between the flow that lifts the bed enough and the one that keeps it in; it may be empty. */
export type WindowView = {
  readonly state: 'open' | 'empty';
  readonly drawing: Pictures;
  readonly edges: readonly { readonly label: string; readonly figure: FigureView }[];
  /** Where the fitted control lies. */
  readonly fits?: string | undefined;
  /** Of an empty one: why, and what can be done. */
  readonly why?: string | undefined;
  readonly choices: readonly string[];
  readonly notes: readonly string[];
  readonly measureFirst: readonly string[];
  readonly bed?: Pictures | undefined;
};

export const windowView = (sheet: Sheet, advice: ProgramAdvice): WindowView | undefined => {
  const { window } = advice;
  const flows = window === undefined ? undefined : windowFlows(sheet, window);
  if (window === undefined || flows === undefined) return undefined;
  const bed = bedOf(sheet);
  return {
    state: window.state,
    drawing: pictures(sheet, 'window', (options) => backwashWindow(flows, options)),
    edges: edgesOf(sheet, window),
    fits: fitsSaid(sheet, window),
    ...emptySaid(sheet, window),
    notes: advice.notes.filter(isOfWindow).map(sheet.say),
    measureFirst: measureFirstSentences(sheet, ofWindow(sheet, window)),
    bed: bed === undefined ? undefined : pictures(sheet, 'bed', (options) => bedDrawing(bed, options), 346),
  };
};

const edgesOf = (sheet: Sheet, window: BackwashWindow): WindowView['edges'] =>
  (
    [
      [sheet.word('papers.backwash.floor'), window.floor],
      [sheet.word(`papers.backwash.ceiling-${limitOf(window)}`), window.ceiling],
    ] as const
  ).flatMap(([label, id]) => {
    const figure = figureView(sheet, id, { name: label });
    return figure === undefined ? [] : [{ label, figure }];
  });

const fitsSaid = (sheet: Sheet, window: BackwashWindow): string | undefined => {
  if (window.state === 'empty') return undefined;
  const fitted = figureView(sheet, window.fitted)?.text ?? '';
  return sheet.word(`cli.program.window-${window.fits}`, { fitted });
};

const emptySaid = (sheet: Sheet, window: BackwashWindow): Pick<WindowView, 'why' | 'choices'> =>
  window.state === 'open'
    ? { choices: [] }
    : { why: sheet.say(window.why), choices: window.choices.map(sheet.say) };
