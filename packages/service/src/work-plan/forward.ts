import type { Operation } from '@brinewright/equipment';
import type { Work } from '../stage/work.ts';
import { arrange } from './arrange.ts';
import type { Needed } from './needed.ts';
import { isLater } from './operation-kinds.ts';
import type { Present } from './present.ts';
import type { Scope } from './scope.ts';
import type { Sequencer } from './sequencer.ts';
import { taskOf, waitsForWater } from './tasks.ts';
import { type Walked, walk } from './walk.ts';

export type Forward = Walked & {
  /** What the targets ask for once everything is back. */
  readonly asked: readonly Operation[];
};

/** From where the work stands to the last piece of work, in order. */
export function* forwardSteps(
  scope: Scope,
  present: Present,
  needed: Needed,
  sequencer: Sequencer,
): Work<Forward> {
  const waits = (operation: Operation): boolean =>
    isLater(operation) || (needed.shuts && waitsForWater(operation, needed.restsOn));
  const now = needed.operations.filter((operation) => !waits(operation));
  const tasks = now.map((operation) => taskOf(scope, operation, needed.restsOn.get(operation.id) ?? []));
  const order = yield* arrange(tasks, present.state, sequencer, { tools: [] });
  const byId = new Map(now.map((operation) => [operation.id, operation]));
  const operations = order.flatMap(({ id }) => byId.get(id) ?? []);
  return { ...walk(operations, present.state, scope, present.times), asked: needed.operations.filter(waits) };
}
