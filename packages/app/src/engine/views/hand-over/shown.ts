import { figureText, nameOfFigure, type Sheet, yearWords } from '@brinewright/papers';
import type { FigureId, ProgramAdvice, ProofCheck } from '@brinewright/service';

/** Figures as they are shown, with what computed them: kept, so that papers of a finished visit stay what they were. */
export type Shown = {
  readonly engine: string;
  readonly definitions: string;
  readonly figures: Readonly<Record<FigureId, string>>;
};

export const shownNow = (sheet: Sheet): Shown => ({
  engine: sheet.assessment.engine,
  definitions: sheet.assessment.definitions,
  figures: Object.fromEntries(figuresOfRecord(sheet).map((id) => [id, figureText(sheet, id)])),
});

/** What a hand-over rests on, each by what it is called there. */
type Recorded = { readonly id: FigureId | undefined; readonly label?: string };

/** Settings found and set, what they come to, the window, the limits of every check. */
const recorded = (sheet: Sheet): readonly Recorded[] => {
  const { program, proof } = sheet.assessment.stages;
  return [
    { id: 'situation.hardness' },
    { id: 'situation.bed.volume' },
    { id: 'program.dose' },
    ...(program.state === 'done' ? ofProgram(sheet, program.value) : []),
    { id: 'program.as-set.salt' },
    { id: 'program.days.exact' },
    ...(proof.state === 'done' ? proof.value.checks.flatMap((check) => ofCheck(sheet, check)) : []),
  ];
};

const figuresOfRecord = (sheet: Sheet): readonly FigureId[] => {
  const ids = recorded(sheet).flatMap(({ id }) =>
    id !== undefined && Object.hasOwn(sheet.assessment.figures, id) ? [id] : [],
  );
  return [...new Set(ids)];
};

const ofProgram = (
  sheet: Sheet,
  { settings, volume, days, window, year }: ProgramAdvice,
): readonly Recorded[] => [
  ...[...settings, volume, days].flatMap((one) => [{ id: one?.found }, { id: one?.set }]),
  { id: window?.floor },
  { id: window?.ceiling },
  ...year.flatMap(({ what, found, set, difference }) => {
    const name = sheet.word(yearWords[what]);
    return [
      { id: found, label: `${name}, ${sheet.word('papers.as-found')}` },
      { id: set, label: `${name}, ${sheet.word('papers.as-set')}` },
      { id: difference, label: `${name}, ${sheet.word('papers.difference')}` },
    ];
  }),
];

const ofCheck = (sheet: Sheet, { title, predicted, reading, limits }: ProofCheck): readonly Recorded[] => {
  const name = sheet.say(title);
  return [
    { id: predicted, label: `${name}, ${sheet.word('papers.predicted')}` },
    { id: limits.lower, label: `${name}, ${sheet.word('papers.at-least')}` },
    { id: limits.upper, label: `${name}, ${sheet.word('papers.at-most')}` },
    { id: reading, label: name },
  ];
};

/** A figure as it was handed over, and what a newer program makes of it, where that is something else. */
export type KeptFigure = {
  readonly id: FigureId;
  readonly title: string;
  readonly text: string;
  readonly now?: string | undefined;
};

/** What is computed today, unless it reads as it did then, in whichever units that was. */
const otherNow = (sheet: Sheet, id: FigureId, text: string): string | undefined => {
  if (!Object.hasOwn(sheet.assessment.figures, id)) return sheet.word('app.hand-over.no-longer');
  const systems = ['us', 'metric'] as const;
  const texts = systems.map((system) => figureText({ ...sheet, reader: { ...sheet.reader, system } }, id));
  return texts.includes(text) ? undefined : figureText(sheet, id);
};

export const keptFigures = (sheet: Sheet, shown: Shown): readonly KeptFigure[] => {
  const labels = new Map(recorded(sheet).map(({ id, label }) => [id, label]));
  const isSame =
    shown.engine === sheet.assessment.engine && shown.definitions === sheet.assessment.definitions;
  return Object.entries(shown.figures).map(([id, text]) => {
    const now = isSame ? undefined : otherNow(sheet, id, text);
    return { id, title: labels.get(id) ?? nameOfFigure(sheet, id), text, now };
  });
};
