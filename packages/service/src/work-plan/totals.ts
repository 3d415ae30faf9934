import { fitsVariant, type Variant, type WorkState } from '@brinewright/equipment';
import type { Scope } from './scope.ts';
import { changeMinutes, type Hand, handAfter, sideChanges, toolChanges } from './sequencer.ts';
import { atWork, changed, reverse } from './state.ts';
import type { BackStep, OperationStep, PlanStep, WorkPlan } from './work-plan.ts';

type Timed = OperationStep | BackStep;

const timed = (steps: readonly PlanStep[]): readonly Timed[] =>
  steps.flatMap((step) => (step.kind === 'operation' || step.kind === 'back' ? [step] : []));

const stillToDo = (steps: readonly PlanStep[]): readonly Timed[] => timed(steps).filter(({ done }) => !done);

/** Operations of bodies that exclude one another are not added up: the variant that takes longest counts. */
export const minutesOf = (steps: readonly PlanStep[], { classes }: Scope): number =>
  Math.max(0, ...classes.map(({ variant }) => sumOf(stillToDo(steps).filter(isOf(variant)))));

const isOf =
  (variant: Variant) =>
  (step: Timed): boolean =>
    fitsVariant(step.kind === 'operation' ? step.operation.fits : step.of.fits, variant);

const sumOf = (steps: readonly Timed[]): number => steps.reduce((sum, { minutes }) => sum + minutes, 0);

/** Of the steps still to do, those that begin or end with the water off. */
export const outageMinutes = (steps: readonly PlanStep[], from: WorkState, scope: Scope): number =>
  minutesOf(stepsWithoutWater(steps, from), scope);

const stepsWithoutWater = (steps: readonly PlanStep[], from: WorkState): readonly PlanStep[] => {
  let state = from;
  return stillToDo(steps).filter((step) => {
    const wasOff = state.water === 'off';
    const makes = step.kind === 'operation' ? step.operation.makes : reverse(step.of.makes, atWork);
    state = changed(state, makes);
    return wasOff || state.water === 'off';
  });
};

export const changesOfToolAndSide = (steps: readonly PlanStep[], scope: Scope): WorkPlan['changes'] => {
  let hand: Hand = { tools: [] };
  let tools = 0;
  let sides = 0;
  for (const step of stillToDo(steps)) {
    const operation = step.kind === 'operation' ? step.operation : step.of;
    const task = {
      tools: scope.tools(operation),
      ...(operation.side === undefined ? {} : { side: operation.side }),
    };
    tools += toolChanges(hand, task);
    sides += sideChanges(hand, task);
    hand = handAfter(hand, task);
  }
  return { tools, sides, minutes: tools * changeMinutes.tool + sides * changeMinutes.side };
};

/** Cautions in the order in which the plan meets them. */
export const hazardsOf = (steps: readonly PlanStep[]): readonly string[] => [
  ...new Set(
    timed(steps).flatMap((step) =>
      step.kind === 'operation' ? step.operation.hazards : (step.of.back?.hazards ?? []),
    ),
  ),
];
