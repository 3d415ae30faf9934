import type { CautionView, StepView } from '../../engine/views/work/work-types.ts';
import type { Counts } from '../commands/done.ts';
import { type Difference, differences } from './counting.ts';

/** What the main button does now, or why it cannot. */
export type Action =
  | { readonly kind: 'was-done' }
  | { readonly kind: 'blocked'; readonly why: string; readonly at: string }
  | { readonly kind: 'fact'; readonly caution: CautionView }
  | { readonly kind: 'count'; readonly differences: readonly Difference[] }
  | { readonly kind: 'done' };

export const actionOf = (step: StepView, counts: Counts): Action => {
  if (step.done) return { kind: 'was-done' };
  if (step.blocked !== undefined && step.blocked.at !== step.id) return { kind: 'blocked', ...step.blocked };
  const caution = step.cautions.find(({ isDue, seen }) => isDue && seen === undefined);
  if (caution !== undefined) return { kind: 'fact', caution };
  const wrong = differences(counts, step.counts);
  return wrong.length > 0 ? { kind: 'count', differences: wrong } : { kind: 'done' };
};
