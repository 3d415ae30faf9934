import type { Operation } from '@brinewright/equipment';
import type { Work } from '../stage/work.ts';
import { allBefore } from './all-before.ts';
import { arrange } from './arrange.ts';
import { isOpenUnderWater, type Needed } from './needed.ts';
import { isLater } from './operation-kinds.ts';
import type { Present } from './present.ts';
import type { Scope } from './scope.ts';
import type { Sequencer } from './sequencer.ts';
import { changed } from './state.ts';
import { taskOf, waitsForWater } from './tasks.ts';
import { type Walked, walk } from './walk.ts';

export type Forward = Walked & {
  /** What the targets ask for once everything is back. */
  readonly asked: readonly Operation[];
};

/**
 * What was to come before something already shut still comes before whatever follows the shutting: warning people and
 * the tap that lets air in before the vent.
 */
const passedOver = ({ operations }: Scope, operation: Operation): readonly string[] =>
  operation.phase === 'isolate' ? [...allBefore(operations, operation.id)] : [];

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
  const first = isOpenUnderWater(present) ? now.filter(({ makes }) => makes.water === 'off') : [];
  const state = first.reduce((so, { makes }) => changed(so, makes), present.state);
  const tasks = now
    .filter((operation) => !first.includes(operation))
    .map((operation) => ({
      ...taskOf(scope, operation, needed.restsOn.get(operation.id) ?? []),
      rather: passedOver(scope, operation),
    }));
  const order = yield* arrange(tasks, state, sequencer, { tools: [] });
  const byId = new Map(now.map((operation) => [operation.id, operation]));
  const operations = [...first, ...order.flatMap(({ id }) => byId.get(id) ?? [])];
  return { ...walk(operations, present.state, scope, present.times), asked: needed.operations.filter(waits) };
}
