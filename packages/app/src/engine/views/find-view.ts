import { boreOf } from '@brinewright/equipment';
import {
  boreDrawing,
  cutaway,
  likeliest,
  minutesName,
  type Sheet,
  shownPercent,
  stopThatShows,
  stopWords,
} from '@brinewright/papers';
import {
  type Diagnosis,
  type FaultOdds,
  type NextTest,
  noneOfThese,
  type TestReading,
} from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import type { OddsRow } from '../../ui/parts/odds.tsx';
import type { Made } from '../made.ts';
import { type Pictures, pictures, sheetOf } from './figure-view.ts';
import { type TestView, testView } from './find-tests.ts';
import { type IssueSaid, issueSaid } from './issue-said.ts';
import { faultTitle, oddsName, opensName, withSpread } from './names.ts';
import { outcomeTitle } from './reading-ask.ts';
import { toldBefore } from './told-before.ts';

export type ReadingRow = {
  readonly test: string;
  readonly title: string;
  readonly text: string;
  readonly spread?: string | undefined;
  readonly count: number;
  readonly isWild: boolean;
  /** Something seen, said in words; those may be long. */
  readonly isWords: boolean;
};

export type OtherTest = {
  readonly id: string;
  readonly title: string;
  readonly takes: string;
  /** What to open first and what runs by itself, in one line. */
  readonly under: string;
};

export type FindView = {
  readonly complaint?: string | undefined;
  /** What changed, and who worked on it last. */
  readonly before: readonly string[];
  /** Asked before anything is tested, where it was not told. */
  readonly askFirst: readonly string[];
  readonly says?: string | undefined;
  readonly standsOn?: string | undefined;
  readonly canAct: boolean;
  readonly odds: readonly OddsRow[];
  /** The test that tells most for a minute. */
  readonly next?: TestView | undefined;
  /** The same, as a line of a list. */
  readonly first?: OtherTest | undefined;
  /** The test that the address names. */
  readonly test?: TestView | undefined;
  /** What else is worth making, the best first. */
  readonly others: readonly OtherTest[];
  /** What the hands can do while the next one runs by itself. */
  readonly meanwhile: readonly OtherTest[];
  readonly readings: readonly ReadingRow[];
  readonly decided?: { readonly title: string; readonly reason?: string | undefined };
  /** All that can be chosen, the likeliest first; only where the address asks for them. */
  readonly faults: readonly {
    readonly id: string;
    readonly title: string;
    readonly percent: string;
    readonly explains: string;
  }[];
  readonly picture?: { readonly title: string; readonly note: string; readonly drawings: Pictures };
  /** What is missing, and what is odd about the readings. */
  readonly gaps: readonly string[];
  readonly doubts: readonly IssueSaid[];
};

export const findView = (made: Made, part?: string): FindView => {
  const sheet = sheetOf(made);
  const { situation, diagnosis } = made.assessment.stages;
  const found = diagnosis.state === 'done' ? diagnosis.value : undefined;
  const readings = situation.state === 'done' ? situation.value.readings : [];
  return {
    complaint: made.visit.complaint === undefined ? undefined : sheet.text(made.visit.complaint.words),
    before: toldBefore(sheet),
    askFirst: found?.askFirst.map(sheet.say) ?? [],
    ...(found === undefined ? nothingFound : foundIn(sheet, found)),
    ...testsIn(sheet, found),
    test: testNamed(sheet, found, part),
    faults: part === 'choose' ? (found?.odds ?? []).flatMap((one) => choiceOf(sheet, one)) : [],
    readings: readings.map((one) => readingRow(sheet, one)),
    ...decidedIn(sheet),
    gaps: [...new Set(diagnosis.gaps.map(({ message }) => sheet.say(message)))],
    doubts: [...situation.issues.filter(({ at }) => at[0] === 'readings'), ...diagnosis.issues].map((issue) =>
      issueSaid(sheet, issue),
    ),
  };
};

const nothingFound = { canAct: false, odds: [] } as const;

const standsOn: Readonly<Record<Diagnosis['standsOn'], MessageKey>> = {
  measured: 'papers.stands-on.measured',
  'stated-odds': 'papers.stands-on.stated-odds',
  told: 'papers.stands-on.told',
};

const foundIn = (sheet: Sheet, found: Diagnosis) => {
  const drawn = pictureOf(sheet, found.odds[0]);
  return {
    says: sheet.say(found.says),
    standsOn: sheet.word(standsOn[found.standsOn]),
    canAct: found.act !== undefined,
    odds: shownOdds(found.odds).map((one) => oddsRow(sheet, one)),
    ...(drawn === undefined ? {} : { picture: drawn }),
  };
};

const mostRows = 5;

/** Only what is worth a line: the leaders, and always none of these. */
const shownOdds = (odds: Diagnosis['odds']): Diagnosis['odds'] => [
  ...odds.filter(({ fault, p }) => fault !== noneOfThese && shownPercent(p) > 0).slice(0, mostRows),
  ...odds.filter(({ fault }) => fault === noneOfThese),
];

const oddsRow = (sheet: Sheet, one: FaultOdds): OddsRow => {
  const clues = (from: FaultOdds['speaksFor']) =>
    from.length === 0 ? undefined : from.map(sheet.say).join('; ');
  const hasMoved = shownPercent(one.before) !== shownPercent(one.p);
  return {
    title: faultTitle(sheet, one),
    p: one.p,
    percent: oddsName(one.p),
    before: hasMoved ? one.before : undefined,
    for: clues(one.speaksFor),
    against: clues(one.speaksAgainst),
    isNone: one.fault === noneOfThese,
  };
};

const choiceOf = (sheet: Sheet, one: FaultOdds): FindView['faults'] =>
  one.definition === undefined
    ? []
    : [
        {
          id: one.fault,
          title: faultTitle(sheet, one),
          percent: oddsName(one.p),
          explains: sheet.text(one.definition.explains),
        },
      ];

const testsIn = (
  sheet: Sheet,
  found: Diagnosis | undefined,
): Pick<FindView, 'next' | 'first' | 'others' | 'meanwhile'> => {
  const [next, ...others] = found?.next ?? [];
  if (found === undefined || next === undefined) return { others: [], meanwhile: [] };
  const brief = others.map((one) => otherTest(sheet, one));
  return {
    next: testView(sheet, next.test, next, found.groups),
    first: otherTest(sheet, next),
    others: brief,
    meanwhile: brief.filter(({ id }) => next.meanwhile.includes(id)).slice(0, mostMeanwhile),
  };
};

const mostMeanwhile = 3;

const otherTest = (sheet: Sheet, { test, opens, minutes }: NextTest): OtherTest => {
  const { hands, waiting } = test.minutes;
  const waits = waiting === 0 ? [] : [sheet.word('app.find.waits', { minutes: minutesName(sheet, waiting) })];
  return {
    id: test.id,
    title: sheet.text(test.ask),
    takes: minutesName(sheet, opens.length === 0 ? hands : Math.round(minutes)),
    under: [opensName(sheet, opens) ?? sheet.word('app.find.open.none'), ...waits].join(', '),
  };
};

/** Offered or not, any test of the family can be made and its readings looked at. */
const testNamed = (
  sheet: Sheet,
  found: Diagnosis | undefined,
  part: string | undefined,
): TestView | undefined => {
  const test = sheet.family?.tests.find(({ id }) => id === part);
  if (test === undefined) return undefined;
  return testView(
    sheet,
    test,
    found?.next.find((one) => one.test.id === test.id),
    found?.groups ?? [],
  );
};

const readingRow = (sheet: Sheet, reading: TestReading): ReadingRow => {
  const { test } = reading;
  const base = { test: test.id, title: sheet.text(test.ask), count: 1, isWild: false, isWords: true };
  if (reading.kind === 'cannot-do') return { ...base, text: sheet.word('app.readings.cannot') };
  if (reading.kind === 'state') return { ...base, text: outcomeTitle(sheet, test, reading.outcome) };
  const { value, u, repeats, wild } = reading;
  const shown = withSpread(sheet, test.reading?.kind ?? 'count', value, u);
  return { ...base, ...shown, count: repeats.length, isWild: wild.length > 0, isWords: false };
};

const decidedIn = (sheet: Sheet): Pick<FindView, 'decided'> => {
  const decided = sheet.visit.decided?.findLast(({ what }) => what === 'fault');
  if (decided === undefined) return {};
  const definition = sheet.family?.faults.find(({ id }) => id === decided.value);
  return {
    decided: {
      title: definition === undefined ? decided.value : sheet.text(definition.title),
      reason: decided.reason === undefined ? undefined : sheet.text(decided.reason),
    },
  };
};

/** The bore with the seal torn that the leading fault would need: drawn as an if, so a possible one is enough. */
const pictureOf = (sheet: Sheet, leader: FaultOdds | undefined): FindView['picture'] => {
  const variant = likeliest(sheet);
  const seal = leader?.word === 'unlikely' ? undefined : leader?.seals[0];
  if (variant === undefined || seal === undefined || sheet.family === undefined) return undefined;
  const bore = boreOf(sheet.family, variant);
  if (bore === undefined) return undefined;
  const stop = stopThatShows(bore, seal);
  return {
    title: sheet.word('app.find.if-torn', { seal, stop: sheet.word(stopWords[stop]) }),
    note: leader?.definition === undefined ? '' : sheet.text(leader.definition.explains),
    drawings: pictures(sheet, 'find-cut', (options) =>
      cutaway(boreDrawing(bore, stop), { ...options, torn: seal }),
    ),
  };
};
