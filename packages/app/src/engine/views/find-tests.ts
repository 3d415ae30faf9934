import type { DiagnosisTest } from '@brinewright/equipment';
import { effortName, figureText, minutesName, type Sheet, toolName } from '@brinewright/papers';
import type { ActionGroup, Diagnosis, NextTest } from '@brinewright/service';
import { alone, faultTitle, oddsName, opensName } from './names.ts';
import { bandOf, outcomeTitle, quantityAsk, type ReadingAsk, type StateAnswer } from './reading-ask.ts';
import { takenReadings } from './taken-readings.ts';

/** One test: what is asked, what it costs, and the entry of its reading. */
export type TestView = ReadingAsk & {
  readonly takes: string;
  /** What must come off first; nothing where it can be done as it stands. */
  readonly opens?: string | undefined;
  readonly tools?: string | undefined;
  readonly cautions: readonly { readonly signal: string; readonly title: string }[];
  /** What a sound unit shows: 'Soft', and the figure it is held against. */
  readonly normal: string;
  readonly expected?: string | undefined;
};

export const testView = (
  sheet: Sheet,
  test: DiagnosisTest,
  next: NextTest | undefined,
  groups: readonly ActionGroup[],
): TestView => {
  const { reading } = test;
  const expected = reading?.of === undefined ? undefined : figureText(sheet, reading.of);
  const plausible =
    reading === undefined ? undefined : { min: reading.plausible.min.si, max: reading.plausible.max.si };
  const quantity =
    reading === undefined ? undefined : quantityAsk(sheet, reading.kind, { u: reading.u.si, plausible });
  return {
    id: test.id,
    title: sheet.text(test.ask),
    how: test.how.map(sheet.text),
    ...(quantity === undefined ? {} : { quantity }),
    answers: test.outcomes.map((outcome) => answerOf(sheet, test, outcome, next, groups, quantity?.units[0])),
    ...takenOf(sheet, test),
    takes: next === undefined ? effortName(sheet, test.minutes) : costOf(sheet, next),
    opens: opensName(sheet, next?.opens ?? test.after),
    tools: toolsOf(sheet, test),
    cautions: cautionsOf(sheet, test),
    normal: outcomeTitle(sheet, test, test.normal),
    expected,
  };
};

/** Minutes of hands with what must come off, and what runs by itself. */
const costOf = (sheet: Sheet, { test, minutes, meanwhile }: NextTest): string =>
  meanwhile.length > 0 ? effortName(sheet, test.minutes) : minutesName(sheet, Math.round(minutes));

const answerOf = (
  sheet: Sheet,
  test: DiagnosisTest,
  outcome: DiagnosisTest['outcomes'][number],
  next: NextTest | undefined,
  groups: readonly ActionGroup[],
  unit: string | undefined,
): StateAnswer => {
  const found = next?.outcomes.find((one) => one.outcome === outcome.id);
  return {
    id: outcome.id,
    title: alone(sheet.text(outcome.title)),
    band: bandOf(sheet, test, outcome, unit),
    ...(found === undefined ? {} : { leads: leadsTo(sheet, groups, found.leads), share: oddsName(found.p) }),
  };
};

/** The likeliest fault of the repair that a result points to. */
const leadsTo = (sheet: Sheet, groups: readonly ActionGroup[], key: string): string => {
  const fault = groups.find((group) => group.key === key)?.named[0];
  const odds = oddsIn(sheet).find((one) => one.fault === fault);
  return odds === undefined ? sheet.word('diagnosis.none-of-these') : faultTitle(sheet, odds);
};

const oddsIn = ({ assessment }: Sheet): Diagnosis['odds'] => {
  const { diagnosis } = assessment.stages;
  return diagnosis.state === 'done' ? diagnosis.value.odds : [];
};

const toolsOf = (sheet: Sheet, { tools }: DiagnosisTest): string | undefined =>
  tools.length === 0 ? undefined : tools.map((id) => toolName(sheet, id)).join(', ');

const cautionsOf = (sheet: Sheet, { hazards }: DiagnosisTest): TestView['cautions'] =>
  (sheet.family?.cautions ?? [])
    .filter(({ id }) => hazards.includes(id))
    .map(({ signal, title }) => ({ signal: sheet.word(`cli.signal.${signal}`), title: sheet.text(title) }));

const readingsOf = ({ visit }: Sheet, test: string) =>
  (visit.readings ?? []).filter(
    (one) => one.test === test && (one.conditioner ?? visit.subject) === visit.subject,
  );

const takenOf = (sheet: Sheet, test: DiagnosisTest): Pick<ReadingAsk, 'taken' | 'wild'> => {
  const of = { title: test.ask, kind: test.reading?.kind, u: test.reading?.u.si };
  return takenReadings(sheet, of, readingsOf(sheet, test.id), (state) =>
    state === 'cannot-do' ? sheet.word('app.readings.cannot') : outcomeTitle(sheet, test, state),
  );
};
