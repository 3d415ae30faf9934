import type { Operation, WorkState } from '@brinewright/equipment';
import { instanceId, isReversible } from './operation-kinds.ts';
import { type Off, operationStep } from './plan-steps.ts';
import type { Scope } from './scope.ts';
import { stackCount } from './stack-count.ts';
import { changed } from './state.ts';
import type { OperationStep } from './work-plan.ts';

export type Walked = {
  readonly steps: readonly OperationStep[];
  readonly state: WorkState;
  /** What these operations take off, in their order. */
  readonly off: readonly Off[];
};

/** Operations in order, done one after the other from a state. */
export const walk = (
  operations: readonly Operation[],
  from: WorkState,
  scope: Scope,
  times: ReadonlyMap<string, number>,
): Walked => {
  const steps: OperationStep[] = [];
  const off: Off[] = [];
  let state = from;
  for (const operation of operations) {
    const stepId = instanceId(operation.id, (times.get(operation.id) ?? 0) + 1);
    const count = operation.counts === 'stack' ? stackCount(scope.family, 'out') : undefined;
    steps.push(operationStep(scope, operation, stepId, false, count));
    if (isReversible(operation)) off.push({ stepId, operation, before: state });
    state = changed(state, operation.makes);
  }
  return { steps, state, off };
};
