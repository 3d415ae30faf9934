import type { Operation, WorkState } from '@brinewright/equipment';
import type { Work } from '../stage/work.ts';
import { arrange } from './arrange.ts';
import { type Extent, type Later, laterFor } from './later.ts';
import { isStrip, opensUp, sweepId } from './operation-kinds.ts';
import { backStep, type Off } from './plan-steps.ts';
import type { Present } from './present.ts';
import type { Scope } from './scope.ts';
import { type Hand, handAfter, type Sequencer } from './sequencer.ts';
import { stackCount } from './stack-count.ts';
import { changed } from './state.ts';
import { laterTaskOf, makesBack, reverseTasks, taskOf } from './tasks.ts';
import { walk } from './walk.ts';
import type { BackStep, PlanStep } from './work-plan.ts';

/** Where the forward work ends, and what brings the unit back from there. */
export type PutBackProblem = {
  readonly scope: Scope;
  readonly present: Present;
  readonly off: readonly Off[];
  readonly state: WorkState;
  /** Forward work that is still to be done. */
  readonly ahead: readonly Operation[];
  readonly asked: readonly Operation[];
  readonly newRoles: ReadonlySet<string>;
  readonly shuts: boolean;
  readonly extent: Extent;
};

export type PutBack = { readonly steps: readonly PlanStep[]; readonly later: Later };

/**
 * Reassembly as the reverse of what came off, the final sweep, then water, power and home, then proving. What was
 * shut before the unit was opened is opened after it is closed.
 */
export function* putBack(problem: PutBackProblem, sequencer: Sequencer): Work<PutBack> {
  const { scope, present } = problem;
  const { early, late } = split(problem.off, scope);
  const backs = early.toReversed().map((off) => stepBack(problem, off));
  const state = early.toReversed().reduce((so, off) => changed(so, makesBack(off)), problem.state);
  const later = laterOf(problem, late, state);
  const tasks = [
    ...later.operations.map((one) => laterTaskOf(scope, one, later.restsOn.get(one.id) ?? [])),
    ...reverseTasks(scope, late),
  ];
  const order = yield* arrange(tasks, state, sequencer, handOf(scope, early));
  const byId = new Map(later.operations.map((operation) => [operation.id, operation]));
  const closing = order.flatMap(({ id }): readonly PlanStep[] => {
    const operation = byId.get(id);
    if (operation !== undefined) return walk([operation], state, scope, present.times).steps;
    return late.filter((off) => stepBack(problem, off).id === id).map((off) => stepBack(problem, off));
  });
  return { steps: [...backs, ...sweepOf(problem, early), ...closing], later };
}

const stepBack = ({ scope, present, newRoles }: PutBackProblem, off: Off): BackStep => {
  const wrong = present.countedIn.get(off.operation.id);
  const count = off.operation.counts === 'stack' ? (wrong ?? stackCount(scope.family, 'in')) : undefined;
  return backStep(scope, off, false, newRoles, count);
};

/** Late: what was shut or unplugged before the unit was opened, and what had to come off to reach it. */
const split = (
  off: readonly Off[],
  scope: Scope,
): { readonly early: readonly Off[]; readonly late: readonly Off[] } => {
  const reached = new Set<string>();
  const reach = (operation: Operation): void => {
    for (const id of operation.after.flat()) {
      const before = scope.operations.get(id);
      if (before === undefined || reached.has(id)) continue;
      reached.add(id);
      reach(before);
    }
  };
  for (const { operation } of off) if (!isStrip(operation)) reach(operation);
  const isLate = ({ operation }: Off): boolean => !isStrip(operation) || reached.has(operation.id);
  return { early: off.filter((one) => !isLate(one)), late: off.filter(isLate) };
};

const laterOf = (problem: PutBackProblem, late: readonly Off[], state: WorkState): Later => {
  const { scope, present, ahead } = problem;
  const isOpening = ahead.some(opensUp);
  return laterFor({
    scope,
    state,
    reverses: late.map((off) => ({ makes: makesBack(off) })),
    given: new Set([...present.done, ...ahead.map(({ id }) => id)]),
    restored: isOpening ? new Set() : present.restored,
    asked: problem.asked,
    shuts: problem.shuts,
    extent: problem.extent,
  });
};

/** The last tools of reassembly are still in the hand. */
const handOf = (scope: Scope, early: readonly Off[]): Hand =>
  early
    .toReversed()
    .map(({ operation }) => taskOf(scope, operation, []))
    .reduce<Hand>(handAfter, { tools: [] });

const sweepOf = ({ present }: PutBackProblem, early: readonly Off[]): readonly PlanStep[] => {
  const cameOff = early.length > 0 || present.steps.some((step) => step.kind === 'back' && isStrip(step.of));
  return cameOff && !(present.swept && early.length === 0)
    ? [{ kind: 'sweep', id: sweepId, done: false }]
    : [];
};
