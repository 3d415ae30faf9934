import type { Fits, MeasuredTell, Tell } from '@brinewright/equipment';
import { featureName, minutesName, type Sheet, valueName } from '@brinewright/papers';
import type { NextTell } from '@brinewright/service';
import { formatQuantity } from '@brinewright/words';
import { answerDrawings } from './answer-drawing.ts';
import { alone, opensName, percentName } from './names.ts';
import { type QuantityAsk, quantityAsk } from './reading-ask.ts';

export type TellAnswerView = {
  readonly id: string;
  readonly title: string;
  /** What it goes with: 'Body size: slim'. */
  readonly goesWith?: string | undefined;
  /** What it leaves of the choices that matter today. */
  readonly leaves?: string | undefined;
  readonly share?: string | undefined;
  readonly drawing?: string | undefined;
};

/** One tell as a question: where to look, what it costs, what each answer leaves. */
export type TellView = {
  readonly id: string;
  readonly ask: string;
  readonly how?: string | undefined;
  readonly takes: string;
  /** What must come off first; nothing where it can be seen as it stands. */
  readonly opens?: string | undefined;
  /** Features that it tells apart. */
  readonly parts: string;
  /** Of a hundred answers so many are right. */
  readonly trust: string;
  readonly answers: readonly TellAnswerView[];
  /** A size to be measured instead of answers to choose from. */
  readonly measure?: QuantityAsk;
};

export const tellView = (sheet: Sheet, tell: Tell, next?: NextTell): TellView => ({
  id: tell.id,
  ask: sheet.text(tell.ask),
  how: tell.how === undefined ? undefined : sheet.text(tell.how),
  takes: minutesName(sheet, Math.round(next?.minutes ?? tell.minutes)),
  opens: opensName(sheet, stillOn(sheet, tell.after)),
  parts: featuresOf(tell)
    .map((feature) => featureName(sheet, feature))
    .join(', '),
  trust: percentName(sheet, tell.trust),
  answers: tell.kind === 'seen' ? seenAnswers(sheet, tell, next) : sizes(sheet, tell, next),
  ...(tell.kind === 'measured' ? { measure: measureOf(sheet, tell) } : {}),
});

const measureOf = (sheet: Sheet, { u, expected }: MeasuredTell): QuantityAsk =>
  quantityAsk(sheet, 'length', { u: u.si, about: Object.values(expected)[0]?.si });

/** What is apart already need not come off for it. */
const stillOn = ({ visit }: Sheet, operations: readonly string[]): readonly string[] =>
  operations.filter((id) => !(visit.done ?? []).some(({ operation }) => operation === id));

const featuresOf = (tell: Tell): readonly string[] =>
  tell.kind === 'measured'
    ? [tell.feature]
    : [...new Set(tell.answers.flatMap(({ allows }) => Object.keys(allows)))];

const seenAnswers = (
  sheet: Sheet,
  tell: Extract<Tell, { kind: 'seen' }>,
  next: NextTell | undefined,
): readonly TellAnswerView[] => {
  const titled = tell.answers.map(({ title }) => alone(sheet.text(title)));
  const drawings = answerDrawings(titled);
  return tell.answers.map(({ id, allows }, place) => ({
    id,
    title: titled[place] ?? id,
    goesWith: valuesOf(sheet, allows),
    drawing: drawings?.[place],
    ...leftBy(sheet, next, id),
  }));
};

/** '54 mm': the sizes that would be found, each with what it goes with. */
const sizes = (sheet: Sheet, tell: MeasuredTell, next: NextTell | undefined): readonly TellAnswerView[] =>
  Object.entries(tell.expected)
    .toSorted(([a, left], [b, right]) => left.si - right.si || (a < b ? -1 : 1))
    .map(([value, size]) => ({
      id: value,
      title: formatQuantity(size, sheet.reader).text,
      goesWith: alone(valueName(sheet, tell.feature, value)),
      ...leftBy(sheet, next, value),
    }));

const leftBy = (sheet: Sheet, next: NextTell | undefined, answer: string) => {
  const left = next?.leaves.find((one) => one.answer === answer);
  if (left === undefined) return {};
  return {
    leaves: sheet.word('cli.recognition.leaves', { count: left.groups }),
    share: percentName(sheet, left.p),
  };
};

/** What an answer goes with, in the words of the definition. */
const valuesOf = (sheet: Sheet, allows: Fits): string | undefined => {
  const said = Object.entries(allows).map(([feature, values]) =>
    values.map((value) => valueName(sheet, feature, value)).join(` ${sheet.word('cli.or')} `),
  );
  return said.length === 0 ? undefined : said.join(', ');
};
