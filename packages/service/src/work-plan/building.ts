import type { Situation } from '../situation/situation.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

const bypass = 'bypass';

/**
 * What the building gets while the unit is out of service: raw water where a bypass was seen and stays on, nothing where
 * the bypass itself comes off, otherwise the one or the other. Of a make nobody has described anything may come off.
 */
export const buildingMeanwhile = (
  { described, visit }: Situation,
  steps: readonly PlanStep[],
): WorkPlan['building'] => {
  const comesOff = steps.some(
    (step) => step.kind === 'operation' && step.operation.takesOut.includes(bypass),
  );
  if (comesOff && described) return 'none';
  return visit.apart?.bypass === undefined ? 'raw-or-none' : 'raw';
};
