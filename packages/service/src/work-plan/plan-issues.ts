import type { Family, Operation } from '@brinewright/equipment';
import { type Issue, type MessageKey, type MessageValue, message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import type { Aims } from './aims.ts';
import { checkForVariants, type PlanProblem } from './check-plan.ts';
import { listed } from './gate.ts';
import type { Later } from './later.ts';
import type { Scope } from './scope.ts';
import type { StateKey } from './state.ts';
import { targetSaid } from './target-said.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

export type Problems = {
  readonly aims: Aims;
  readonly later: Later;
  readonly inferred: readonly Operation[];
  readonly scope: Scope;
};

/** What the plan cannot keep to, said before anybody works by it. */
export const planIssues = (s: Situation, plan: WorkPlan, problems: Problems): readonly Issue[] => [
  ...(s.described ? problems.aims.unreached.map((target) => unreachedIssue(s.family, target)) : []),
  ...needIssues(plan, problems.scope),
  ...inferredIssues(problems.inferred),
  ...problems.later.left.map(leftIssue),
  ...plan.steps.flatMap(uncountedIssue),
];

const unreachedIssue = (family: Family, target: Target): Issue => {
  const id = 'role' in target ? target.role : 'operation' in target ? target.operation : target.kind;
  return {
    code: 'no-operation',
    severity: 'warning',
    at: ['repair', 'targets', id],
    message: message('plan.no-operation', { what: targetSaid(family, target) }),
    mend: message('plan.no-operation-mend'),
  };
};

/** The finished plan is walked once more; what it finds is a fault of the definition or of what was written. */
const needIssues = (plan: WorkPlan, scope: Scope): readonly Issue[] => {
  const variants = scope.classes.map(({ variant }) => variant);
  const problems = checkForVariants(plan.steps, plan.state, [...scope.operations.values()], variants);
  const orders = new Map(plan.steps.flatMap((step): [string, MessageValue][] => orderOf(step)));
  return problems.map((problem) => problemIssue(problem, orders.get(problem.at) ?? problem.at));
};

const orderOf = (step: PlanStep): [string, MessageValue][] => {
  if (step.kind === 'operation') return [[step.id, step.operation.order]];
  return step.kind === 'back' ? [[step.id, step.of.back?.order ?? step.of.order]] : [];
};

const stateKeys: Readonly<Record<StateKey, MessageKey>> = {
  water: 'plan.state.water',
  pressure: 'plan.state.pressure',
  power: 'plan.state.power',
  piston: 'plan.state.piston',
  temperature: 'plan.state.temperature',
};

const wantedKeys: Readonly<Record<string, MessageKey>> = {
  on: 'plan.wanted.on',
  off: 'plan.wanted.off',
  full: 'plan.wanted.full',
  none: 'plan.wanted.none',
  home: 'plan.wanted.home',
  removal: 'plan.wanted.removal',
  cool: 'plan.wanted.cool',
};

const problemIssue = (problem: PlanProblem, order: MessageValue): Issue => {
  const base = { code: 'plan-need', severity: 'error', at: ['plan', 'steps', problem.at] } as const;
  if (problem.kind === 'need') {
    const key = wantedKeys[problem.wanted];
    const wanted = key === undefined ? problem.wanted : message(key);
    const state = message(stateKeys[problem.key]);
    return {
      ...base,
      message: message('plan.need', { order, state, wanted }),
      mend: message('plan.need-mend'),
    };
  }
  return {
    ...base,
    message: message('plan.out-of-order', { order }),
    mend: message('plan.out-of-order-mend'),
  };
};

const inferredIssues = (inferred: readonly Operation[]): readonly Issue[] =>
  inferred.length === 0
    ? []
    : [
        {
          code: 'taken-as-off',
          severity: 'warning',
          at: ['done'],
          message: message('plan.taken-as-off', { orders: listed(inferred.map(({ order }) => order)) }),
          mend: message('plan.taken-as-off-mend'),
        },
      ];

const leftIssue = (key: StateKey): Issue => ({
  code: 'state-left',
  severity: 'warning',
  at: ['apart', key],
  message: message('plan.state-left', { state: message(stateKeys[key]) }),
  mend: message('plan.state-left-mend'),
});

/** Counted out and in: a stack that was moved without a count may be a piece short. */
const uncountedIssue = (step: PlanStep): readonly Issue[] => {
  if (step.kind !== 'operation' && step.kind !== 'back') return [];
  if (!step.done || step.count === undefined || step.count.counted !== undefined) return [];
  const order = step.kind === 'operation' ? step.operation.order : (step.of.back?.order ?? step.of.order);
  return [
    {
      code: 'not-counted',
      severity: 'warning',
      at: ['done', step.id],
      message: message('plan.not-counted', { order }),
      mend: message('plan.not-counted-mend'),
    },
  ];
};
