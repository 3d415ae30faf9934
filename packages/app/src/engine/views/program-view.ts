import {
  alike,
  isFinding,
  isOther,
  measureFirstSentences,
  ofSettings,
  regenerationSteps,
  runsHard,
  type Sheet,
  timeline,
  waysShown,
  yearWords,
} from '@brinewright/papers';
import type { ProgramAdvice } from '@brinewright/service';
import type { DerivationView } from '../../ui/parts/figure.tsx';
import type { Made } from '../made.ts';
import {
  derivationOf,
  type FigureView,
  figureView,
  type Pictures,
  pictures,
  sheetOf,
} from './figure-view.ts';
import { type Lacks, lacksOf } from './gaps.ts';
import { type DoseView, doseViews } from './program/doses.ts';
import { type SettingField, settingFields } from './program/fields.ts';
import { type GlanceView, glance } from './program/glance.ts';
import { type SettingRow, settingRows } from './program/settings.ts';
import { type WindowView, windowView } from './program/window.ts';

/** What to key in, why, and what it changes. */
export type ProgramView = Lacks & {
  readonly isBlocked: boolean;
  readonly dose?: FigureView | undefined;
  readonly doses: readonly DoseView[];
  readonly isDoseDecided: boolean;
  readonly glance: readonly GlanceView[];
  /** What the found settings do. */
  readonly findings: readonly string[];
  readonly rows: readonly SettingRow[];
  readonly fields: readonly SettingField[];
  readonly isFound: boolean;
  readonly isSet: boolean;
  readonly once: readonly string[];
  readonly notes: readonly string[];
  readonly measureFirst: readonly string[];
  readonly timeline?: Pictures | undefined;
  readonly window?: WindowView | undefined;
  readonly year: readonly YearRow[];
  readonly yearDoubt?: string | undefined;
  /** Every figure that the shown ones rest on, each once. */
  readonly figures: readonly WayView[];
};

export type WayView = {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  readonly derivation: DerivationView;
};

/** What a found setting costs against the one advised, a year. */
export type YearRow = {
  readonly label: string;
  readonly found: FigureView;
  readonly set: FigureView;
  readonly difference: FigureView;
};

export const programView = (made: Made): ProgramView => programOf(sheetOf(made));

/** The same of a visit that was never made. */
export const programOf = (sheet: Sheet): ProgramView => {
  const { program, situation } = sheet.assessment.stages;
  const { settings, decided } = sheet.visit;
  const asked = situation.gaps.filter(({ settles }) => settles.includes('program'));
  return {
    ...lacksOf(sheet, { ...program, gaps: [...program.gaps, ...asked] }),
    isBlocked: program.state === 'blocked',
    isFound: settings?.found !== undefined,
    isSet: settings?.set !== undefined,
    isDoseDecided: decided?.some(({ what }) => what === 'dose') ?? false,
    ...(program.state === 'done' ? advised(sheet, program.value) : nothing(sheet)),
  };
};

type Advised = Omit<ProgramView, keyof Lacks | 'isBlocked' | 'isFound' | 'isSet' | 'isDoseDecided'>;

const advised = (sheet: Sheet, advice: ProgramAdvice): Advised => {
  const rows = settingRows(sheet, advice);
  const steps = regenerationSteps(sheet, advice);
  return {
    dose: advice.doses.length === 0 ? undefined : figureView(sheet, 'program.dose'),
    doses: doseViews(sheet, advice),
    glance: glance(sheet, advice),
    findings: advice.notes.filter(isFinding).map(sheet.say),
    rows,
    fields: settingFields(sheet, new Map(rows.map(({ name, advised: value }) => [name, value]))),
    once: advice.once.map(sheet.say),
    notes: advice.notes.filter(isOther).map(sheet.say),
    measureFirst: measureFirstSentences(sheet, ofSettings(sheet, advice)),
    timeline: steps.length === 0 ? undefined : pictures(sheet, 'time', (options) => timeline(steps, options)),
    window: windowView(sheet, advice),
    year: yearRows(sheet, advice),
    yearDoubt: advice.year.length > 0 && runsHard(advice) ? sheet.word('papers.year.runs-hard') : undefined,
    figures: waysShown(sheet).map((way) => ({
      id: way.id,
      title: way.title,
      text: way.result,
      derivation: derivationOf(way),
    })),
  };
};

const nothing = (sheet: Sheet): Advised => ({
  doses: [],
  glance: [],
  findings: [],
  rows: [],
  fields: settingFields(sheet, new Map()),
  once: [],
  notes: [],
  measureFirst: [],
  year: [],
  figures: [],
});

const yearRows = (sheet: Sheet, { year }: ProgramAdvice): readonly YearRow[] =>
  year.flatMap(({ what, found, set, difference }) => {
    const ids = [found, set, difference];
    const texts = alike(sheet, ids);
    const [asFound, asSet, saved] = ids.map((id, place) => figureView(sheet, id, { text: texts[place] }));
    return asFound === undefined || asSet === undefined || saved === undefined
      ? []
      : [{ label: sheet.word(yearWords[what]), found: asFound, set: asSet, difference: saved }];
  });
