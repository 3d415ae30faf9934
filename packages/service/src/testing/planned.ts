import type { Family } from '@brinewright/equipment';
import type { Quantity } from '@brinewright/units';
import type { Target } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import { finish } from '../stage/work.ts';
import type { Visit } from '../visit/schema.ts';
import { planWork } from '../work-plan/plan-work.ts';
import { sensibleSequencer } from '../work-plan/sensible-sequencer.ts';
import type { PlanStep, WorkPlan } from '../work-plan/work-plan.ts';
import { situationOf } from './tiny-family.ts';
import { repairOf, tinyOperations } from './tiny-operations.ts';

/** Plans of the tiny family, and what tests ask of them. */
export const replace = (role: string): Target => ({ kind: 'replace', role });
export const doing = (id: string): Target => ({ kind: 'operation', operation: id });

export const visitOf = (more: Partial<Visit>, given: Partial<Situation> = {}): Situation => {
  const s = situationOf({ family: tinyOperations(), ...given });
  return { ...s, visit: { ...s.visit, ...more } };
};

export const stageOf = (s: Situation, repair: RepairPlan) =>
  finish(planWork(s, undefined, repair, sensibleSequencer));

export const planOf = (targets: readonly Target[], more: Partial<Visit> = {}, family?: Family): WorkPlan => {
  const s = visitOf(more, family === undefined ? {} : { family });
  const stage = stageOf(s, repairOf(targets));
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

export const ids = (steps: readonly PlanStep[]): readonly string[] => steps.map(({ id }) => id);
export const doneBy = (...list: readonly string[]): Pick<Visit, 'done'> => ({
  done: list.map((id) => ({ operation: id })),
});
export const keys = (messages: readonly { readonly key: string }[]): readonly string[] =>
  messages.map(({ key }) => key);

export const givenFigure = (id: string, value: Quantity): Situation['figures'] => ({
  [id]: {
    id,
    quantity: value,
    by: { kind: 'given', how: 'measured' },
    inputs: {},
    source: 'visit',
    issues: [],
  },
});

export const upToStack = [
  'photograph',
  'warn',
  'shut',
  'vent',
  'to-removal',
  'unplug',
  'verify',
  'cover-off',
  'pin-out',
  'slim-drive-off',
  'piston-out',
] as const;
