import type { Operation, WorkState } from '@brinewright/equipment';
import type { Situation } from '../situation/situation.ts';
import { instanceId, isReversible, sortedById } from './operation-kinds.ts';
import { operationStep } from './plan-steps.ts';
import type { Draft } from './present.ts';
import type { Scope } from './scope.ts';
import { atWork, changed, changesNothing, holds, stateKeys } from './state.ts';

/** `visit.apart`, written by whoever stands there, outweighs what follows from the list of things done. */
export const noteApart = (draft: Draft, s: Situation, scope: Scope): void => {
  const { water, pressure, power, piston } = s.visit.apart ?? {};
  const apart: WorkState = {
    ...(water === undefined ? {} : { water }),
    ...(pressure === undefined ? {} : { pressure }),
    ...(power === undefined ? {} : { power }),
    ...(piston === undefined ? {} : { piston }),
  };
  const state = changed(draft.state, apart);
  forgetContradicted(draft, state);
  draft.state = state;
  if (apart.water === 'off') draft.wasShut = true;
  for (const operation of sortedById(scope.operations.values()))
    if (isAlreadySo(draft, operation, apart)) infer(draft, scope, operation);
};

/** Written as shut, found open: it has to be done again. */
const forgetContradicted = (draft: Draft, state: WorkState): void => {
  const contradicts = ({ makes }: Operation): boolean =>
    stateKeys.some(
      (key) => makes[key] !== undefined && makes[key] === draft.state[key] && makes[key] !== state[key],
    );
  draft.off = draft.off.filter(({ operation }) => operation.phase !== 'isolate' || !contradicts(operation));
  for (const operation of contradicted(draft, contradicts)) draft.prepared.delete(operation);
};

const contradicted = (draft: Draft, contradicts: (operation: Operation) => boolean): readonly string[] =>
  draft.steps.flatMap((step) =>
    step.kind === 'operation' && contradicts(step.operation) ? [step.operation.id] : [],
  );

/** Found shut, nobody wrote who shut it: the plan takes it as done and puts it back in the end. */
const isAlreadySo = (draft: Draft, operation: Operation, apart: WorkState): boolean =>
  operation.phase === 'isolate' &&
  !changesNothing(operation.makes) &&
  holds(apart, operation.makes) &&
  !draft.prepared.has(operation.id);

const infer = (draft: Draft, scope: Scope, operation: Operation): void => {
  const times = (draft.times.get(operation.id) ?? 0) + 1;
  const stepId = instanceId(operation.id, times);
  draft.times.set(operation.id, times);
  draft.done.add(operation.id);
  draft.prepared.add(operation.id);
  draft.steps.push(operationStep(scope, operation, stepId, true, undefined));
  if (isReversible(operation)) draft.off.push({ stepId, operation, before: atWork });
};
