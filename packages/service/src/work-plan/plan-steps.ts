import type { Operation, WorkState } from '@brinewright/equipment';
import { backId, backMinutes, forwardMinutes } from './operation-kinds.ts';
import type { Scope } from './scope.ts';
import type { BackStep, OperationStep, StackCount } from './work-plan.ts';

/** Something that is off or shut now, with the state it was met in. */
export type Off = {
  readonly stepId: string;
  readonly operation: Operation;
  readonly before: WorkState;
};

export const operationStep = (
  scope: Scope,
  operation: Operation,
  id: string,
  done: boolean,
  count: StackCount | undefined,
): OperationStep => ({
  kind: 'operation',
  id,
  operation,
  done,
  tools: scope.tools(operation),
  minutes: forwardMinutes(operation),
  ...(scope.fitsAll(operation.fits) ? {} : { when: operation.fits }),
  ...(count === undefined ? {} : { count }),
});

export const backStep = (
  scope: Scope,
  { operation, stepId }: Off,
  done: boolean,
  newRoles: ReadonlySet<string>,
  count: StackCount | undefined,
): BackStep => ({
  kind: 'back',
  id: backId(stepId),
  of: operation,
  done,
  minutes: backMinutes(operation),
  ...(scope.fitsAll(operation.fits) ? {} : { when: operation.fits }),
  puts: operation.takesOut
    .filter(scope.hasRole)
    .map((role) => ({ role, as: newRoles.has(role) ? 'new' : 'old' })),
  lookOvers: [
    ...(operation.counts === 'stack' ? scope.family.looksWrong : []),
    ...(operation.back?.lookOvers ?? []),
  ],
  ...(count === undefined ? {} : { count }),
});
