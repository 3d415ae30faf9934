import type { Message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import type { Work } from '../stage/work.ts';
import { leaveCard } from './leave-card.ts';
import { settingsBack, settingsToRun } from './leave-settings.ts';
import { ableToMake } from './makers.ts';
import { isOpenUnderWater } from './needed.ts';
import { instanceId } from './operation-kinds.ts';
import { operationStep } from './plan-steps.ts';
import type { Present } from './present.ts';
import { type PutBackProblem, putBack } from './put-back.ts';
import type { Scope } from './scope.ts';
import type { Sequencer } from './sequencer.ts';
import { changed, isShut } from './state.ts';
import { minutesOf } from './totals.ts';
import { walk } from './walk.ts';
import type { LeaveSafe, OperationStep, PlanStep } from './work-plan.ts';

/** What was to be done, where it stands, and the operation at which a piece is missing. */
export type Leaving = {
  readonly s: Situation;
  readonly scope: Scope;
  readonly present: Present;
  readonly targets: readonly Target[];
  readonly missingAt: string | undefined;
};

/**
 * From where the work stands to a unit one may walk away from: put back as it was and in service, or, when a piece
 * of it is missing, closed, without pressure or power, and led round.
 */
export function* leaveSafeFrom(leaving: Leaving, sequencer: Sequencer): Work<LeaveSafe> {
  const { s, scope, present, missingAt } = leaving;
  const into = missingAt === undefined ? 'service' : 'bypass';
  const shuts = into === 'bypass' || isOpenUnderWater(present);
  const shutting = shuts ? shuttingSteps(scope, present) : [];
  const { steps } = yield* putBack(problemOf(scope, present, shutting), sequencer);
  const taken = [
    ...shutting,
    ...(into === 'service' ? steps : steps.filter((step) => isClosing(step, missingAt))),
  ];
  const isUnplugged = [present.state, ...shutting.map(({ operation }) => operation.makes)].some(
    ({ power }) => power === 'off',
  );
  return {
    into,
    steps: taken,
    minutes: minutesOf(taken, scope),
    settings: settingsFor(s, into),
    card: leaveCard(leaving, { into, isUnplugged }),
  };
}

const settingsFor = (s: Situation, into: LeaveSafe['into']): readonly Message[] =>
  into === 'service' ? [...settingsBack(s), ...settingsToRun(s)] : settingsBack(s);

const problemOf = (scope: Scope, present: Present, shutting: readonly OperationStep[]): PutBackProblem => {
  const operations = shutting.map(({ operation }) => operation);
  const shut = walk(operations, present.state, scope, present.times);
  return {
    scope,
    present,
    off: [...shut.off, ...present.off],
    state: shut.state,
    ahead: operations,
    asked: [],
    newRoles: new Set(),
    shuts: present.wasShut || isShut(shut.state),
    extent: 'least',
  };
};

/** A valve that lacks a piece or stands open sees neither pressure nor power; a hot one cools before it is vented. */
const shuttingSteps = (scope: Scope, present: Present): readonly OperationStep[] => {
  const isolating = [...scope.operations.values()].filter(({ phase }) => phase === 'isolate');
  const wanted = [
    ['water', 'off'],
    ...(present.state.pressure === 'none' ? [] : [['temperature', 'cool'] as const]),
    ['pressure', 'none'],
    ['power', 'off'],
  ] as const;
  let { state } = present;
  return wanted.flatMap(([key, value]) => {
    const [able] = state[key] === value ? [] : ableToMake(isolating, key, value);
    if (able === undefined) return [];
    state = changed(state, able.makes);
    const id = instanceId(able.id, (present.times.get(able.id) ?? 0) + 1);
    return [operationStep(scope, able, id, false, undefined)];
  });
};

/** The body is closed and the bench is empty; no water, and the pieces that do not add up stay out. */
const isClosing = (step: PlanStep, missingAt: string | undefined): boolean => {
  if (step.kind === 'sweep') return true;
  return step.kind === 'back' && step.of.phase !== 'isolate' && step.of.id !== missingAt;
};
