import type { DiagnosisTest, WorkState } from '@brinewright/equipment';
import { at } from '../recognition/bayes.ts';
import { type Prospect, prospect } from '../recognition/prospect.ts';
import type { Access, Belief } from '../recognition/recognition.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import { byThenId } from '../stage/rank.ts';
import type { Work } from '../stage/work.ts';
import type { ActionGroups } from './action-groups.ts';
import { canBeJudged } from './bands.ts';
import type { NextTest } from './diagnosis.ts';
import { type Hypotheses, shareFitting } from './hypotheses.ts';
import type { Predictor } from './predictor.ts';

/** A test that tells less than 0.03 nat of what is to be done is not worth making (modelling trials). */
const leastBits = 0.03 / Math.LN2;

/** No test is shorter than this; keeps the worth per minute finite. */
const leastMinutes = 0.25;

/** A test is offered where the variants it fits are at least even odds. */
const leastFit = 0.5;

/** What is needed to judge what a test would tell. */
export type Question = {
  readonly s: Situation;
  readonly belief: Belief;
  readonly hypotheses: Hypotheses;
  readonly groups: ActionGroups;
  readonly odds: Float64Array;
  readonly predictor: Predictor;
  readonly access: Access;
  /** Tests that the figures answer; nobody is asked for them. */
  readonly computed: readonly TestReading[];
};

export type NextTests = {
  readonly next: readonly NextTest[];
  /** Worth making, but the figure their result is judged against is missing. */
  readonly unjudged: readonly DiagnosisTest[];
};

type Useful = { readonly test: DiagnosisTest; readonly prospect: Prospect };

/** Tests not yet made that tell something of what is to be done, the one that tells most per minute first. */
export function* nextTests(q: Question): Work<NextTests> {
  const open = q.s.family.tests.filter((test) => isOpen(q, test));
  const useful: Useful[] = [];
  for (const [n, test] of open.entries()) {
    const worth = prospect(q.odds, q.groups, tableOf(q, test));
    if (worth.bits >= leastBits) useful.push({ test, prospect: worth });
    yield { done: n + 1, of: open.length };
  }
  const judged = useful.filter(({ test }) => canBeJudged(test, q.s));
  return {
    next: judged.map((one) => nextTest(q, one, judged)).sort(byWorth),
    unjudged: useful.filter((one) => !judged.includes(one)).map(({ test }) => test),
  };
}

const byWorth = byThenId<NextTest>(
  ({ perMinute }) => perMinute,
  ({ test }) => test.id,
);

const isOpen = ({ s, belief, computed }: Question, test: DiagnosisTest): boolean =>
  test.kinds.includes(s.kind) &&
  ![...s.readings, ...computed].some((reading) => reading.test.id === test.id) &&
  shareFitting(s.family, test.fits, belief) >= leastFit;

/** Odds of each outcome under each hypothesis. */
const tableOf = ({ s, hypotheses: { ids }, predictor }: Question, test: DiagnosisTest) => {
  const odds = ids.map((fault) => predictor.predict(fault, test, s));
  const answers = test.outcomes.map(({ id }) => id);
  return { answers, rows: answers.map((_, o) => Float64Array.from(odds, (row) => at(row, o))) };
};

const nextTest = (q: Question, { test, prospect: worth }: Useful, useful: readonly Useful[]): NextTest => {
  const meanwhile = meanwhileOf(q, test, useful);
  const waiting = meanwhile.length > 0 ? 0 : test.minutes.waiting;
  const minutes = test.minutes.hands + waiting + q.access(test.after);
  const apart = new Set((q.s.visit.done ?? []).map(({ operation }) => operation));
  return {
    test,
    bits: worth.bits,
    minutes,
    opens: test.after.filter((operation) => !apart.has(operation)),
    perMinute: worth.bits / Math.max(minutes, leastMinutes),
    outcomes: test.outcomes.map(({ id }, o) => ({
      outcome: id,
      p: worth.answers[o]?.p ?? 0,
      leads: leaderOf(q.groups, worth.answers[o]?.groups),
    })),
    meanwhile,
  };
};

/** Useful tests for the hands while this one waits: nothing more to open, and no state that disagrees. */
const meanwhileOf = (
  { access }: Question,
  test: DiagnosisTest,
  useful: readonly Useful[],
): readonly string[] =>
  test.minutes.waiting === 0
    ? []
    : useful
        .map((one) => one.test)
        .filter((other) => other !== test && access(other.after) === 0)
        .filter((other) => other.minutes.waiting === 0 && agree(test.needs, other.needs))
        .map(({ id }) => id);

const agree = (a: WorkState, b: WorkState): boolean =>
  agrees(a.water, b.water) &&
  agrees(a.pressure, b.pressure) &&
  agrees(a.power, b.power) &&
  agrees(a.piston, b.piston) &&
  agrees(a.temperature, b.temperature);

const agrees = (a: string | undefined, b: string | undefined): boolean =>
  a === undefined || b === undefined || a === b;

const leaderOf = ({ keys }: ActionGroups, odds: Float64Array | undefined): string => {
  const ranked = keys
    .map((key, g) => ({ key, p: at(odds ?? [], g) }))
    .sort(
      byThenId(
        ({ p }) => p,
        ({ key }) => key,
      ),
    );
  return ranked[0]?.key ?? '';
};
