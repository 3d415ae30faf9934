import { type Message, message } from '@brinewright/words';
import type { Recognition } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import { done, type Gap, type Stage } from '../stage/stage.ts';
import type { Work } from '../stage/work.ts';
import { type Aims, aimsOf } from './aims.ts';
import { buildingMeanwhile } from './building.ts';
import { forwardSteps } from './forward.ts';
import { gateFor } from './gate.ts';
import type { Later } from './later.ts';
import { leaveSafeFrom } from './leave-safe.ts';
import { isOpenUnderWater, type Needed, neededFor } from './needed.ts';
import { planIssues } from './plan-issues.ts';
import { type Present, presentOf } from './present.ts';
import { type PutBackProblem, putBack } from './put-back.ts';
import { type Scope, scopeOf } from './scope.ts';
import type { Sequencer } from './sequencer.ts';
import { isShut } from './state.ts';
import { miscountIn, stoppedAt } from './stopped.ts';
import { changesOfToolAndSide, hazardsOf, minutesOf, outageMinutes } from './totals.ts';
import { outletIssues, warnings } from './uses.ts';
import { whenSaid } from './when-said.ts';
import type { GateStep, PlanStep, WorkPlan } from './work-plan.ts';

/**
 * The plan of the work from where it stands: record, the gate, what shuts the water, what has to come off and no
 * more, the work, everything back in reverse, the sweep, water and power again, proof. It covers all variants that
 * remain, marks what is done, and carries a way to leave the unit safe from this very moment.
 *
 * Never blocked: without targets it still says how to put back what is off.
 * Cost: order is exact up to twelve operations at a time, beyond that the sequencer's best.
 */
export function* planWork(
  s: Situation,
  recognition: Recognition | undefined,
  repair: RepairPlan,
  sequencer: Sequencer,
): Work<Stage<WorkPlan>> {
  const scope = scopeOf(s, recognition, repair.targets);
  const aims = aimsOf(repair, scope);
  const { present, needed } = standing(s, scope, aims);
  const { ungated, later } = yield* stepsFor({ scope, aims, present, needed }, sequencer);
  const outage = outageMinutes(ungated, present.state, scope);
  const building = buildingMeanwhile(s, ungated);
  const gated = { s, scope, recognition, repair, steps: ungated, outageMinutes: outage, building };
  const isOpen = isOpenUnderWater(present);
  const steps = needed.shuts ? withGate(ungated, gateFor(gated), isOpen) : ungated;
  const miscount = miscountIn(steps);
  const stopped = isOpen && miscount === undefined ? undefined : stoppedAt(steps, miscount, present.state);
  const leaving = { s, scope, present, targets: repair.targets, missingAt: miscount?.operation };
  const plan: WorkPlan = {
    steps,
    minutes: minutesOf(steps, scope),
    outageMinutes: outage,
    building,
    changes: changesOfToolAndSide(steps, scope),
    ...(stopped === undefined ? {} : { stopped }),
    hazards: hazardsOf(steps),
    state: present.state,
    leaveSafe: yield* leaveSafeFrom(leaving, sequencer),
    says: [
      ...(isOpen ? [message('plan.says.shut-first')] : []),
      ...saysOf(s, aims, needed.shuts, steps),
      ...whenSaid(scope, steps),
    ],
  };
  const issues = planIssues(s, plan, { aims, later, scope, inferred: present.inferred });
  const outlet = outletIssues(s, recognition, repair.targets);
  return done(plan, { gaps: gapsOf(repair), issues: [...issues, ...outlet] });
}

/** Where the work stands and what is needed from there. */
const standing = (s: Situation, scope: Scope, aims: Aims): Pick<Parts, 'present' | 'needed'> => {
  const present = presentOf(s, scope, aims.newRoles);
  const needed = neededFor(aims.ways, scope, present, { forced: isForced(s, aims, present) });
  const bypassed = needed.operations.some(({ makes }) => makes.water === 'off') ? inBypass(s) : undefined;
  return bypassed === undefined ? { present, needed } : standing(bypassed, scope, aims);
};

/** A unit that stands in bypass has its water off as far as the work asks for that; otherwise it is left as found. */
const inBypass = (s: Situation): Situation | undefined => {
  const { apart } = s.visit;
  if (apart?.bypass !== 'bypass' || apart.water !== undefined) return undefined;
  return { ...s, visit: { ...s.visit, apart: { ...apart, water: 'off' } } };
};

type Parts = {
  readonly scope: Scope;
  readonly aims: Aims;
  readonly present: Present;
  readonly needed: Needed;
};

/** What was done, what is ahead and what brings the unit back, without the gate. */
function* stepsFor(
  { scope, aims, present, needed }: Parts,
  sequencer: Sequencer,
): Work<{ readonly ungated: readonly PlanStep[]; readonly later: Later }> {
  const ahead = yield* forwardSteps(scope, present, needed, sequencer);
  const problem: PutBackProblem = {
    scope,
    present,
    off: [...present.off, ...ahead.off],
    state: ahead.state,
    ahead: ahead.steps.map(({ operation }) => operation),
    asked: ahead.asked,
    newRoles: aims.newRoles,
    shuts: needed.shuts,
    extent: 'all',
  };
  const { steps, later } = yield* putBack(problem, sequencer);
  return { ungated: [...present.steps, ...ahead.steps, ...steps], later };
}

/** A make nobody described: a part that no operation reaches is got at by the maker's instructions, water off first. */
const isForced = (s: Situation, { unreached }: Aims, present: Present): boolean =>
  !s.described &&
  unreached.some(({ kind }) => kind === 'replace') &&
  (!present.wasShut || isShut(present.state));

/** After the last thing recorded, before anything shuts the water. An open unit under water is shut before all else. */
const withGate = (steps: readonly PlanStep[], gate: GateStep, isOpen: boolean): readonly PlanStep[] => {
  const shutting = steps.findIndex(
    (step) =>
      step.kind === 'operation' &&
      isShut(step.operation.makes) &&
      (step.done || !isOpen || step.operation.makes.water !== 'off'),
  );
  const before = shutting < 0 ? steps : steps.slice(0, shutting);
  const recorded = before.findLastIndex(
    (step) => step.kind === 'operation' && step.operation.phase === 'record',
  );
  return steps.toSpliced(recorded + 1, 0, gate);
};

const saysOf = (s: Situation, aims: Aims, shuts: boolean, steps: readonly PlanStep[]): readonly Message[] => [
  ...(s.described ? [] : [message('plan.says.maker')]),
  ...(aims.wholeStack ? [message('plan.says.whole-stack')] : []),
  ...(steps.length > 0 && !shuts ? [message('plan.says.water-stays-on')] : []),
  ...(shuts ? warnings(s) : []),
];

const gapsOf = (repair: RepairPlan): readonly Gap[] =>
  repair.targets.length > 0
    ? []
    : [{ needs: ['readings'], message: message('plan.gap.targets'), settles: ['plan'] }];
