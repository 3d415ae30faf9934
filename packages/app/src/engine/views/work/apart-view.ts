import { orderOf, type Sheet } from '@brinewright/papers';
import type { WorkPlan } from '@brinewright/service';
import type { ApartView } from './work-types.ts';

const values = {
  water: ['on', 'off'],
  pressure: ['full', 'none'],
  power: ['on', 'off'],
  piston: ['home', 'removal'],
} as const;

/** What is shut, vented, unplugged and off the valve at this moment. */
export const apartView = (sheet: Sheet, { state, steps }: Pick<WorkPlan, 'state' | 'steps'>): ApartView => ({
  states: (['water', 'pressure', 'power', 'piston'] as const).flatMap((id) => {
    const value = state[id];
    if (value === undefined) return [];
    return [
      {
        id,
        name: sheet.word(`plan.state.${id}`),
        value,
        says: sheet.word(`plan.wanted.${value}`),
        options: values[id].map((one) => ({ value: one, says: sheet.word(`plan.wanted.${one}`) })),
      },
    ];
  }),
  off: steps.flatMap((step) =>
    step.kind === 'back' && !step.done && isOff(steps, step.id) ? [orderOf(sheet, step)] : [],
  ),
});

/** Its forward step is done, so it waits to go back. */
const isOff = (steps: WorkPlan['steps'], back: string): boolean =>
  steps.some((step) => step.kind === 'operation' && step.done && `${step.id}.back` === back);
