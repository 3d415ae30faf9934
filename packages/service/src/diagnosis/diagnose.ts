import type { DiagnosisTest } from '@brinewright/equipment';
import { message } from '@brinewright/words';
import { at, posterior } from '../recognition/bayes.ts';
import type { Access, Belief } from '../recognition/recognition.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import { blocked, done, type Gap, type Stage } from '../stage/stage.ts';
import type { Work } from '../stage/work.ts';
import { actionGroups, rankedGroups } from './action-groups.ts';
import { canBeJudged } from './bands.ts';
import { type Clue, cluesOf, readingClueId, saysSomething } from './clues.ts';
import type { Diagnosis } from './diagnosis.ts';
import { faultOdds, standsOnOf } from './fault-odds.ts';
import { type Hypotheses, hypothesesOf } from './hypotheses.ts';
import { nextTests } from './next-tests.ts';
import type { Predictor } from './predictor.ts';
import { firstQuestions, verdict } from './verdict.ts';

/**
 * Odds of the faults after everything told, seen and measured, what is to be done about them, and the test that
 * tells most of that per minute. Blocked where the definition lists no fault of this kind of unit. `computed` are tests
 * that the figures answer, see `computedReadings`.
 */
export function* diagnose(
  s: Situation,
  belief: Belief,
  predictor: Predictor,
  access: Access,
  computed: readonly TestReading[] = [],
): Work<Stage<Diagnosis>> {
  const hypotheses = hypothesesOf(s, belief);
  if (hypotheses.faults.length === 0) return blocked([noFaults(s)]);
  const clues = cluesOf(s, hypotheses, predictor, computed);
  const odds = oddsAfter(hypotheses, clues);
  const groups = actionGroups(hypotheses);
  const tests = yield* nextTests({ s, belief, hypotheses, groups, odds, predictor, access, computed });
  const found = {
    groups: rankedGroups(hypotheses, groups, odds),
    next: tests.next,
    heard: saysSomething(clues),
    oddsOf: (fault: string) => at(odds, hypotheses.ids.indexOf(fault)),
  };
  const { act, chosen, says } = verdict(s, found);
  const ranked = faultOdds(s, hypotheses, odds, oddsBefore(s, hypotheses, clues), clues);
  const value: Diagnosis = {
    odds: ranked,
    groups: found.groups,
    next: tests.next,
    standsOn: standsOnOf(hypotheses, chosen ?? ranked[0]?.fault ?? '', clues),
    ...(act === undefined ? {} : { act }),
    askFirst: firstQuestions(s),
    says,
  };
  return done(value, { gaps: gapsOf(s, tests.unjudged) });
}

const oddsAfter = ({ prior }: Hypotheses, clues: readonly Clue[]): Float64Array =>
  posterior(
    prior,
    clues.map(({ likelihood }) => likelihood),
  );

/** As they were without the test read last; as they are when nothing was read. */
const oddsBefore = (s: Situation, hypotheses: Hypotheses, clues: readonly Clue[]): Float64Array => {
  const last = lastTest(s);
  const without = last === undefined ? clues : clues.filter(({ id }) => id !== readingClueId(last));
  return oddsAfter(hypotheses, without);
};

const lastTest = (s: Situation): string | undefined => {
  const judged = s.readings.filter(({ kind }) => kind !== 'cannot-do').map(({ test }) => test.id);
  const written = s.visit.readings?.findLast(
    ({ test, conditioner }) => (conditioner ?? s.subject.id) === s.subject.id && judged.includes(test),
  );
  return written?.test ?? judged.at(-1);
};

const noFaults = ({ family }: Situation): Gap => ({
  needs: ['families', family.id, 'faults'],
  message: message('diagnosis.gap.no-faults', { family: family.title }),
  settles: ['diagnosis', 'repair'],
});

/** Readings that were taken, and tests worth making, that nothing can be compared with. */
const gapsOf = (s: Situation, unjudged: readonly DiagnosisTest[]): readonly Gap[] => {
  const taken = s.readings
    .filter(({ kind, test }) => kind === 'quantity' && !canBeJudged(test, s))
    .map(({ test }) => test);
  return [
    ...taken.map((test) => gap(test, 'diagnosis.gap.reading-not-judged')),
    ...(s.described ? unjudged : []).map((test) => gap(test, 'diagnosis.gap.test-not-judged')),
  ];
};

const gap = (
  test: DiagnosisTest,
  key: 'diagnosis.gap.reading-not-judged' | 'diagnosis.gap.test-not-judged',
): Gap => ({
  needs: ['figures', test.reading?.of ?? ''],
  message: message(key, { test: test.ask }),
  settles: ['diagnosis'],
});
