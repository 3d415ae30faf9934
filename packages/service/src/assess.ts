import type { Equipment } from '@brinewright/equipment';
import type { Assessment, Stages } from './assessment.ts';
import { applyingCautions } from './cautions.ts';
import type { Figures } from './derivation/figure.ts';
import { computedReadings } from './diagnosis/computed.ts';
import { diagnose } from './diagnosis/diagnose.ts';
import { statedOdds } from './diagnosis/stated-odds.ts';
import { program } from './program/program.ts';
import type { BackwashWindow } from './program/program-advice.ts';
import { prove } from './proof/prove.ts';
import { believe, recognise } from './recognition/recognise.ts';
import { planRepair } from './repair/plan-repair.ts';
import { targetsOf } from './repair/targets.ts';
import { situate, waitsForSituation } from './situation/situate.ts';
import type { Situation, TestReading } from './situation/situation.ts';
import { type Memo, remember, rememberWork } from './stage/memo.ts';
import type { Stage, StageName } from './stage/stage.ts';
import { type Effort, finish, type Progress } from './stage/work.ts';
import type { Visit } from './visit/schema.ts';
import { accessFrom } from './work-plan/access.ts';
import { planWithWayIn } from './work-plan/if-opened.ts';
import { figuresOfCard } from './work-plan/leave-settings.ts';
import { sensibleSequencer } from './work-plan/sensible-sequencer.ts';

/** Name and version of what computed an assessment; stored with papers. */
export const engine = 'brinewright/0.1.0';

export type AssessOptions = {
  /** When the assessment is made, ISO; the engine has no clock of its own. */
  readonly now: string;
  readonly effort: Effort;
  readonly memo?: Memo;
};

export type StageReady = { readonly stage: StageName; readonly value: Stage<unknown> };

/**
 * The whole assessment of a visit, stage by stage: each is yielded as it is ready, with progress in between, and runs
 * again only when what it reads has changed (memo).
 */
export function* assessing(
  visit: Visit,
  equipment: Equipment,
  options: AssessOptions,
): Generator<StageReady | Progress, Assessment, void> {
  const { memo, now } = options;
  const situation = remember(memo, 'situation', [visit, equipment.digest, now], () =>
    situate(visit, equipment, now),
  );
  yield { stage: 'situation', value: situation };
  if (situation.state === 'blocked') return assessment(equipment, options, undefined, waiting(situation));

  const s = situation.value;
  const same = [s.family.id, equipment.digest, s.subject, s.visit.conditioners.indexOf(s.subject)] as const;
  const { stock, gate, decided } = s.visit;
  const advised = remember(memo, 'program', [same, s.figures, s.found, decided, s.visit.site.name], () =>
    program(s),
  );
  yield { stage: 'program', value: advised };
  const figures = { ...situation.figures, ...advised.figures };
  const { belief } = believe(s);
  const computed = computedReadings(s, figures);
  const diagnosis = yield* rememberWork(
    memo,
    'diagnosis',
    [same, readBy(s), belief, computed.map(outcomeOf)],
    () => diagnose(s, belief, statedOdds, accessFrom(s), computed),
  );
  yield { stage: 'diagnosis', value: diagnosis };
  const found = settled(diagnosis);
  const window = settled(advised)?.window;
  const targets = targetsOf(s, found, window);
  const recognition = remember(memo, 'recognition', [same, s.visit.answers, reachedBy(s), targets], () =>
    recognise(s, targets, accessFrom(s)),
  );
  yield { stage: 'recognition', value: recognition };
  const known = settled(recognition);
  const choice = [targets, belief, known?.next[0]?.tell.id, found?.act, decided, limitsMet(s)];
  const flows = window === undefined ? [] : [window, flowsOf(window).map((id) => figures[id]?.quantity)];
  const repair = remember(memo, 'repair', [same, choice, stock, gate, flows], () =>
    planRepair(s, known, found, targets, settled(advised), figures),
  );
  yield { stage: 'repair', value: repair };
  const bill = settled(repair);
  const plan =
    bill === undefined
      ? waitsForSituation()
      : yield* rememberWork(
          memo,
          'plan',
          [same, s.visit, known?.groups, bill, ...figuresOfCard(figures)],
          () => planWithWayIn({ ...s, figures }, known, bill, sensibleSequencer),
        );
  yield { stage: 'plan', value: plan };
  const proof = remember(memo, 'proof', [s.kind, figures, s.visit.proofs], () =>
    prove(s, settled(advised), figures),
  );
  yield { stage: 'proof', value: proof };

  return assessment(equipment, options, s, {
    situation,
    recognition,
    diagnosis,
    repair,
    plan,
    program: advised,
    proof,
  });
}

export const assess = (visit: Visit, equipment: Equipment, options: AssessOptions): Assessment =>
  finish(assessing(visit, equipment, options));

/**
 * The program alone, from numbers: what the whole assessment would program, without telling variants or faults apart.
 * The other stages wait.
 */
export const assessProgram = (
  visit: Visit,
  equipment: Equipment,
  options: Pick<AssessOptions, 'now'>,
): Assessment => {
  const situation = situate(visit, equipment, options.now);
  const quick = { ...options, effort: 'quick' as const };
  if (situation.state === 'blocked') return assessment(equipment, quick, undefined, waiting(situation));
  const stages = { ...waiting(situation), program: program(situation.value) };
  return assessment(equipment, quick, undefined, stages);
};

const settled = <T>(stage: Stage<T>): T | undefined => (stage.state === 'done' ? stage.value : undefined);

/** What diagnosis reads of a situation. */
const readBy = (s: Situation) => [
  s.readings.map((reading) => ({ ...reading, test: reading.test.id })),
  s.changes,
  s.complaints,
  s.recentlyServiced,
  s.visit.history,
  s.visit.readings,
  s.visit.decided,
  reachedBy(s),
  s.figures,
];

/** What decides how far it is to anything inside. */
const reachedBy = (s: Situation) => [s.visit.done, s.visit.apart, warmest(s)];

const warmest = (s: Situation) => s.figures['situation.temperature.warmest'];

/** What the family's limits are held against. */
const limitsMet = (s: Situation) => [warmest(s), s.figures['situation.supply.pressure']];

/** What repair says of a backwash window. */
const flowsOf = (window: BackwashWindow) => [
  window.floor,
  window.ceiling,
  ...(window.state === 'open' ? [window.fitted ?? ''] : []),
];

const outcomeOf = (reading: TestReading) => (reading.kind === 'state' ? reading.outcome : reading.kind);

const waiting = (situation: Stages['situation']): Stages => {
  const waits = waitsForSituation();
  return {
    situation,
    recognition: waits,
    diagnosis: waits,
    repair: waits,
    plan: waits,
    program: waits,
    proof: waits,
  };
};

const assessment = (
  equipment: Equipment,
  { effort }: AssessOptions,
  s: Situation | undefined,
  stages: Stages,
): Assessment => ({
  engine,
  definitions: equipment.digest,
  effort,
  figures: figuresOf(stages),
  stages,
  cautions: s === undefined ? [] : applyingCautions(s, stages),
});

const figuresOf = (stages: Stages): Figures => ({
  ...stages.situation.figures,
  ...stages.recognition.figures,
  ...stages.diagnosis.figures,
  ...stages.repair.figures,
  ...stages.program.figures,
  ...stages.plan.figures,
  ...stages.proof.figures,
});
