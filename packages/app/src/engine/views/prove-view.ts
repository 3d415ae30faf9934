import {
  figureText,
  measureFirstSentences,
  ofCheck,
  quantityAt,
  type Sheet,
  toleranceLine,
  toleranceOf,
} from '@brinewright/papers';
import { checkDefinitions, type ProofCheck } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import type { Made } from '../made.ts';
import { type FigureView, figureView, type Pictures, pictures, sheetOf } from './figure-view.ts';
import { type IssueSaid, issueSaid } from './issue-said.ts';
import { percentName, withSpread } from './names.ts';
import { quantityAsk, type ReadingAsk } from './reading-ask.ts';
import { takenReadings } from './taken-readings.ts';

export type CheckView = {
  readonly id: string;
  readonly title: string;
  readonly verdict: ProofCheck['verdict'];
  readonly word: string;
  /** Something looked at: seen or not seen, in one tap. */
  readonly isSeen: boolean;
  readonly reading?: { readonly text: string; readonly spread?: string } | undefined;
  /** 'Must be 0.4 to 0.5 gpm.' and 'Predicted 0.45 gpm.' */
  readonly must?: string | undefined;
  readonly limits: readonly FigureView[];
  readonly predicted?: FigureView | undefined;
  readonly sure?: string | undefined;
  readonly decide?: string | undefined;
  readonly line?: Pictures | undefined;
  readonly ask: ReadingAsk;
};

export type ProveView = {
  readonly title: string;
  readonly says: string;
  readonly now: readonly CheckView[];
  readonly tomorrow: readonly CheckView[];
  /** The next thing to read or to look at; none when all of now is read. */
  readonly next: string | undefined;
  readonly measureFirst: readonly string[];
  readonly gaps: readonly string[];
  readonly doubts: readonly IssueSaid[];
};

export const proveView = (made: Made): ProveView => {
  const sheet = sheetOf(made);
  const { proof } = made.assessment.stages;
  const checks = proof.state === 'done' ? proof.value.checks : [];
  const passed = checks.filter(({ verdict }) => verdict === 'pass').length;
  const now = checks.filter(({ when }) => when === 'now');
  return {
    title: sheet.word('app.prove.passed', { passed, of: checks.length }),
    says: proof.state === 'done' ? sheet.say(proof.value.says) : '',
    now: now.toSorted(byUrgency).map((check) => checkView(sheet, check)),
    tomorrow: checks.filter(({ when }) => when === 'tomorrow').map((check) => checkView(sheet, check)),
    next: now.find(({ verdict }) => verdict === 'open')?.id,
    measureFirst: measureFirstSentences(
      sheet,
      checks.map((check) => ofCheck(sheet, check)),
    ),
    gaps: [...new Set(proof.gaps.map(({ message }) => sheet.say(message)))],
    doubts: proof.issues.map((issue) => issueSaid(sheet, issue)),
  };
};

/** What fails stands first, then what is not decided, then what is still to be read. */
const urgency: Readonly<Record<ProofCheck['verdict'], number>> = {
  fail: 0,
  'not-decided': 1,
  open: 2,
  pass: 3,
};
const byUrgency = (a: ProofCheck, b: ProofCheck): number => urgency[a.verdict] - urgency[b.verdict];

const words: Readonly<Record<ProofCheck['verdict'], MessageKey>> = {
  pass: 'papers.verdict.pass',
  fail: 'papers.verdict.fail',
  'not-decided': 'papers.verdict.not-decided',
  open: 'papers.verdict.open',
};

const checkView = (sheet: Sheet, check: ProofCheck): CheckView => {
  const { id, title, verdict, p, decide, predicted } = check;
  const name = sheet.say(title);
  const definition = checkDefinitions.find((one) => one.id === id);
  return {
    id,
    title: name,
    verdict,
    word: sheet.word(words[verdict]),
    isSeen: definition?.read === 'seen',
    reading: readingOf(sheet, check),
    must: mustOf(sheet, check),
    limits: limitsOf(sheet, check, name),
    predicted: figureView(sheet, predicted, { name: `${name}, ${sheet.word('papers.predicted')}` }),
    sure: p === undefined ? undefined : sheet.word('app.prove.sure', { p: sureness(sheet, p) }),
    decide: decide === undefined ? undefined : sheet.say(decide),
    line: lineOf(sheet, check),
    ask: askOf(sheet, check, name),
  };
};

/** Nothing measured is certain. */
const sureness = (sheet: Sheet, p: number): string => {
  if (p > 0.99) return `> ${percentName(sheet, 0.99)}`;
  return p < 0.01 ? `< ${percentName(sheet, 0.01)}` : percentName(sheet, p);
};

const readingOf = (sheet: Sheet, { reading }: ProofCheck): CheckView['reading'] => {
  const value = quantityAt(sheet, reading);
  if (value === undefined || reading === undefined) return undefined;
  return withSpread(sheet, value.kind, value.si, sheet.assessment.figures[reading]?.u);
};

const limitsOf = (sheet: Sheet, { limits }: ProofCheck, name: string): readonly FigureView[] => [
  ...sideOf(sheet, limits.lower, `${name}, ${sheet.word('papers.at-least')}`),
  ...sideOf(sheet, limits.upper, `${name}, ${sheet.word('papers.at-most')}`),
];

const sideOf = (sheet: Sheet, id: string | undefined, name: string): readonly FigureView[] => {
  const side = figureView(sheet, id, { name });
  return side === undefined ? [] : [side];
};

const mustOf = (
  sheet: Sheet,
  { limits: { lower, upper }, standsOn }: Pick<ProofCheck, 'limits' | 'standsOn'>,
): string | undefined => {
  if (lower !== undefined && upper !== undefined)
    return sheet.word('papers.tolerance.within', {
      lower: figureText(sheet, lower),
      upper: figureText(sheet, upper),
    });
  if (upper !== undefined) return sheet.word('papers.tolerance.at-most', { upper: figureText(sheet, upper) });
  if (lower !== undefined)
    return sheet.word('papers.tolerance.at-least', { lower: figureText(sheet, lower) });
  return standsOn === 'seen' ? undefined : sheet.word('papers.tolerance.open');
};

/** Drawn once there is a reading to stand on it. */
const lineOf = (sheet: Sheet, check: ProofCheck): Pictures | undefined => {
  const tolerance = toleranceOf(sheet, check);
  const { lower, upper, reading } = tolerance;
  if (reading === undefined || (lower === undefined && upper === undefined)) return undefined;
  return pictures(sheet, `check-${check.id}`, (options) => toleranceLine(tolerance, options), lineWidth);
};

const lineWidth = 400;

const askOf = (sheet: Sheet, check: ProofCheck, name: string): ReadingAsk => {
  const { id, title } = check;
  const definition = checkDefinitions.find((one) => one.id === id);
  const measured = definition === undefined || definition.read === 'seen' ? undefined : definition;
  const written = (sheet.visit.proofs ?? []).filter((one) => one.check === id);
  const must = measured === undefined ? undefined : mustOf(sheet, check);
  return {
    id,
    title: name,
    how: must === undefined ? [] : [must],
    ...(measured === undefined ? {} : { quantity: quantityAsk(sheet, measured.read, { u: measured.u.si }) }),
    answers: [],
    ...takenReadings(
      sheet,
      { title: sheet.say(title), kind: measured?.read, u: measured?.u.si },
      written,
      (state) => sheet.word(state === 'seen' ? 'app.prove.seen' : 'app.prove.not-seen'),
    ),
  };
};
