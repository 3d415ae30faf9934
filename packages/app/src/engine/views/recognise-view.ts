import { boreOf, type Variant } from '@brinewright/equipment';
import {
  boreDrawing,
  cutaway,
  featureName,
  likeliest,
  type Sheet,
  tellName,
  valueName,
} from '@brinewright/papers';
import type { Contradiction, Recognition } from '@brinewright/service';
import { parseQuantity } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import type { Made } from '../made.ts';
import { type Pictures, pictures, sheetOf } from './figure-view.ts';
import { type IssueSaid, issueSaid } from './issue-said.ts';
import { alone, percentName } from './names.ts';
import { type TellView, tellView } from './recognise-tell.ts';

export type AnsweredTell = {
  readonly question: TellView;
  readonly answer: string;
  readonly title: string;
  readonly isUnsure: boolean;
  /** Without it the answer cannot be taken back from here. */
  readonly entry: string | undefined;
};

export type DoubtView = { readonly title: string; readonly tell?: string | undefined };

export type RecogniseView = {
  /** 'asking' while a tell is worth it, 'settled' when it may stop, else why there is nothing to ask. */
  readonly state: 'asking' | 'settled' | 'not-needed' | 'single' | 'no-tell' | 'blocked';
  readonly why: string;
  /** Tells worth a look, the best first. */
  readonly questions: readonly TellView[];
  /** Tells that say nothing of what is to be decided today, the shortest look first. */
  readonly others: readonly TellView[];
  readonly answered: readonly AnsweredTell[];
  /** The entry made last, to be taken back. */
  readonly last: string | undefined;
  readonly remaining: {
    readonly title: string;
    readonly rows: readonly { readonly title: string; readonly under: string; readonly percent: string }[];
  };
  readonly features: readonly {
    readonly title: string;
    readonly value: string;
    readonly isSettled: boolean;
  }[];
  readonly contradiction?: {
    readonly doubts: readonly DoubtView[];
    readonly conversions: readonly string[];
  };
  readonly picture?: { readonly title: string; readonly drawings: Pictures };
  readonly gaps: readonly string[];
  readonly doubts: readonly IssueSaid[];
};

export const recogniseView = (made: Made): RecogniseView => {
  const sheet = sheetOf(made);
  const { recognition } = made.assessment.stages;
  const found = recognition.state === 'done' ? recognition.value : undefined;
  const answered = answersOf(sheet);
  const picture = pictureOf(sheet);
  return {
    state: stateOf(found),
    why: found === undefined ? sheet.word('app.recognise.blocked') : sheet.say(found.why),
    questions: found?.next.map((next) => tellView(sheet, next.tell, next)) ?? [],
    others: othersIn(sheet, found),
    answered,
    last: lastOf(answered),
    remaining: remainingIn(sheet, found),
    features: found === undefined || found.single ? [] : found.features.map((one) => featureRow(sheet, one)),
    ...(found?.contradiction === undefined ? {} : { contradiction: disagreeing(sheet, found.contradiction) }),
    ...(picture === undefined ? {} : { picture }),
    gaps: found === undefined ? recognition.gaps.map(({ message }) => sheet.say(message)) : [],
    doubts: recognition.issues.map((issue) => issueSaid(sheet, issue)),
  };
};

const stateOf = (found: Recognition | undefined): RecogniseView['state'] => {
  if (found === undefined) return 'blocked';
  if (found.single) return 'single';
  if (found.why.key === 'recognition.why.no-target') return 'not-needed';
  if (found.decided) return 'settled';
  return found.next.length === 0 ? 'no-tell' : 'asking';
};

/** They can be looked at all the same: what is seen early saves a question later. */
const othersIn = (sheet: Sheet, found: Recognition | undefined): readonly TellView[] => {
  if (found === undefined || found.single) return [];
  const known = new Set([
    ...found.next.map(({ tell }) => tell.id),
    ...ofSubject(sheet).map(({ tell }) => tell),
  ]);
  return (sheet.family?.tells ?? [])
    .filter(({ id }) => !known.has(id))
    .toSorted((a, b) => a.after.length - b.after.length || a.minutes - b.minutes)
    .map((tell) => tellView(sheet, tell));
};

const ofSubject = ({ visit }: Sheet) =>
  (visit.answers ?? []).filter(({ conditioner }) => (conditioner ?? visit.subject) === visit.subject);

const answersOf = (sheet: Sheet): readonly AnsweredTell[] =>
  ofSubject(sheet).flatMap(({ tell: id, answer, unsure, entry }) => {
    const tell = sheet.family?.tells.find((one) => one.id === id);
    if (tell === undefined) return [];
    const question = tellView(sheet, tell);
    return [
      { question, answer, title: answerName(sheet, question, answer), isUnsure: unsure === true, entry },
    ];
  });

const answerName = (sheet: Sheet, { answers, measure }: TellView, answer: string): string => {
  if (answer === 'cannot-see') return sheet.word('app.ui.quantity.cannot-see');
  if (answer === 'unsure') return sheet.word('app.ui.quantity.unsure');
  const known = measure === undefined ? answers.find(({ id }) => id === answer) : undefined;
  if (known !== undefined) return known.title;
  const size = parseQuantity(answer, 'length');
  return size.ok ? formatQuantity({ ...size.quantity, as: answer }, sheet.reader).text : answer;
};

/** Ids of entries begin with their time, so the greatest was written last. */
const lastOf = (answered: readonly AnsweredTell[]): string | undefined =>
  answered
    .flatMap(({ entry }) => entry ?? [])
    .toSorted()
    .at(-1);

const shownVariants = 5;

const remainingIn = (sheet: Sheet, found: Recognition | undefined): RecogniseView['remaining'] => {
  if (found === undefined || found.single) return { title: '', rows: [] };
  const shown = found.top.filter(({ p }) => p >= 0.01).slice(0, shownVariants);
  const parting = partingOf(shown.map(({ variant }) => variant));
  return {
    title: sheet.word('app.recognise.remain', { count: found.remaining, of: found.belief.odds.length }),
    rows: shown.map(({ variant, p }) => ({
      ...variantName(sheet, variant, parting),
      percent: percentName(sheet, p),
    })),
  };
};

/** Features in which these variants differ; where they do not, all that they have. */
const partingOf = (variants: readonly Variant[]): readonly string[] => {
  const features = Object.keys(variants[0] ?? {});
  const differing = features.filter((feature) => new Set(variants.map((one) => one[feature])).size > 1);
  return differing.length === 0 ? features : differing;
};

const variantName = (sheet: Sheet, variant: Variant, features: readonly string[]) => {
  const [first = '', ...rest] = features.map((feature) => valueName(sheet, feature, variant[feature] ?? ''));
  return { title: alone(first), under: rest.join(', ') };
};

const featureRow = (sheet: Sheet, { feature, settled, odds }: Recognition['features'][number]) => {
  const open = odds
    .filter(({ p }) => p >= 0.005)
    .map(({ value, p }) => `${valueName(sheet, feature, value)} ${percentName(sheet, p)}`);
  return {
    title: featureName(sheet, feature),
    value: settled === undefined ? open.join(', ') : valueName(sheet, feature, settled),
    isSettled: settled !== undefined,
  };
};

/** The fewest answers to look at again, and what would explain them all. */
const disagreeing = (sheet: Sheet, { doubt, conversions }: Contradiction) => ({
  doubts: doubt.map(
    (one): DoubtView =>
      one.from === 'told'
        ? { title: `${featureName(sheet, one.feature)}: ${valueName(sheet, one.feature, one.answer)}` }
        : {
            title: sheet.word('papers.doubted', {
              asked: tellName(sheet, one.tell),
              answer: doubted(sheet, one),
            }),
            tell: one.tell,
          },
  ),
  conversions: conversions.map(({ feature, from, to }) =>
    sheet.word('cli.recognition.converted', {
      feature: featureName(sheet, feature),
      from: valueName(sheet, feature, from),
      to: valueName(sheet, feature, to),
    }),
  ),
});

const doubted = (
  sheet: Sheet,
  { tell: id, answer }: { readonly tell: string; readonly answer: string },
): string => {
  const tell = sheet.family?.tells.find((one) => one.id === id);
  return tell === undefined ? answer : answerName(sheet, tellView(sheet, tell), answer);
};

/** The valve as it most likely is, in service. */
const pictureOf = (sheet: Sheet): RecogniseView['picture'] => {
  const variant = likeliest(sheet);
  const bore =
    variant === undefined || sheet.family === undefined ? undefined : boreOf(sheet.family, variant);
  if (bore === undefined) return undefined;
  return {
    title: sheet.word('app.recognise.likeliest'),
    drawings: pictures(sheet, 'recognise-cut', (options) => cutaway(boreDrawing(bore, 'service'), options)),
  };
};
