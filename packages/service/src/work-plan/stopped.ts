import type { WorkState } from '@brinewright/equipment';
import { type Message, message } from '@brinewright/words';
import { isLater } from './operation-kinds.ts';
import { miscount } from './stack-count.ts';
import { isShut } from './state.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

export type Miscount = {
  readonly at: string;
  readonly operation: string;
  readonly why: Message;
  readonly mend: Message;
};

/** The first operation whose count does not agree. */
export const miscountIn = (steps: readonly PlanStep[]): Miscount | undefined => {
  for (const step of steps) {
    if (step.kind !== 'operation' && step.kind !== 'back') continue;
    const wrong = miscount(step.kind === 'back' ? 'in' : 'out', step.count);
    const { id: operation } = step.kind === 'back' ? step.of : step.operation;
    if (wrong !== undefined) return { at: step.id, operation, ...wrong };
  }
  return undefined;
};

/** A miscount, or a gate that is next and not passed, or was passed over. */
export const stoppedAt = (
  steps: readonly PlanStep[],
  wrong: Miscount | undefined,
  state: WorkState,
): WorkPlan['stopped'] | undefined => {
  if (wrong !== undefined) return { at: wrong.at, why: wrong.why, mend: wrong.mend };
  const at = steps.findIndex((step) => step.kind === 'gate' && !step.passed);
  const gate = steps[at];
  if (gate?.kind !== 'gate' || !isNext(steps, at)) return undefined;
  const missing = gate.asks.find(({ met }) => !met);
  if (missing === undefined) return undefined;
  const why = message(isShut(state) ? 'plan.stopped.gate-passed-over' : 'plan.stopped.gate');
  return { at: gate.id, why, mend: missing.says };
};

/** Nothing before it is open, and something to be opened comes after it. */
const isNext = (steps: readonly PlanStep[], at: number): boolean =>
  steps.slice(0, at).every((step) => step.kind === 'gate' || step.done) &&
  steps.slice(at).some((step) => step.kind === 'operation' && !step.done && !isLater(step.operation));
