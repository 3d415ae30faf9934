import type { Operation, Phase, WorkState } from '@brinewright/equipment';
import { backId, isReversible, needsOf } from './operation-kinds.ts';
import type { Off } from './plan-steps.ts';
import type { Task } from './precedence.ts';
import type { Scope } from './scope.ts';
import { reverse, stateKeys } from './state.ts';

/** Opening and working share a block: what stands in the way of one job may wait until the next job. */
const blockOf: Readonly<Record<Phase, number>> = {
  record: 0,
  isolate: 2,
  open: 3,
  work: 3,
  restore: 4,
  prove: 5,
};
/** Work that needs no water off is done before it goes off, so that the outage stays short. */
const freeBlock = 1;

export const taskOf = (scope: Scope, operation: Operation, restsOn: Iterable<string>): Task => ({
  id: operation.id,
  after: [...restsOn],
  needs: needsOf(operation),
  makes: operation.makes,
  block: isFree(scope, operation) ? freeBlock : blockOf[operation.phase],
  tools: scope.tools(operation),
  ...(operation.side === undefined ? {} : { side: operation.side }),
});

/** Work that waited for the water is done while the unit is brought back. */
export const laterTaskOf = (scope: Scope, operation: Operation, restsOn: Iterable<string>): Task => {
  const task = taskOf(scope, operation, restsOn);
  return { ...task, block: Math.max(task.block, blockOf.restore) };
};

/** Nothing comes off for it and it asks nothing of water, pressure or power. */
const isFree = (scope: Scope, operation: Operation): boolean =>
  operation.phase === 'work' &&
  !isReversible(operation) &&
  isWithoutState(operation) &&
  (operation.after.length === 0 ||
    operation.after.some((way) => !way.some((id) => scope.operations.has(id))));

const isWithoutState = ({ needs, makes }: Operation): boolean =>
  stateKeys.every((key) => needs[key] === undefined && makes[key] === undefined);

/** Work on running water waits until the water is back, unless something else waits for the work. */
export const waitsForWater = (
  operation: Operation,
  restsOn: ReadonlyMap<string, ReadonlySet<string>>,
): boolean =>
  operation.phase === 'work' &&
  !isReversible(operation) &&
  (operation.needs.water === 'on' || operation.needs.pressure === 'full') &&
  ![...restsOn.values()].some((before) => before.has(operation.id));

/** Reverses that wait until the unit is closed, last off first. */
export const reverseTasks = (scope: Scope, offs: readonly Off[]): readonly Task[] =>
  offs.toReversed().map((off, at, all) => {
    const before = all[at - 1];
    return {
      ...taskOf(scope, off.operation, before === undefined ? [] : [backId(before.stepId)]),
      id: backId(off.stepId),
      needs: {},
      makes: makesBack(off),
      block: blockOf.restore,
    };
  });

export const makesBack = ({ operation, before }: Off): WorkState => reverse(operation.makes, before);
