import type { CautionDefinition } from '@brinewright/equipment';
import { hazardsOf, type Sheet, type WorkStep } from '@brinewright/papers';
import type { PlanStep } from '@brinewright/service';
import type { MessageKey } from '@brinewright/words';
import { clockTime } from '../clock-time.ts';
import type { CautionView } from './work-types.ts';
import { lineOf } from './written-as.ts';

const signals: Readonly<Record<CautionDefinition['signal'], MessageKey>> = {
  danger: 'caution.danger',
  warning: 'caution.warning',
  caution: 'caution.caution',
  notice: 'caution.notice',
};

const isWork = (step: PlanStep): step is WorkStep => step.kind !== 'gate';

const isPreparing = (step: WorkStep): boolean =>
  step.kind === 'operation' && step.operation.phase === 'isolate';

const isAgain = ({ id }: PlanStep): boolean => id.includes('#');

/**
 * The step with which the fact of a caution is to be seen: the last of those that prepare, for it is seen once they
 * are done; of a caution of the work itself the first. A second round asks anew.
 */
export const dueSteps = (steps: readonly PlanStep[], caution: string): readonly WorkStep[] => {
  const naming = steps.filter(isWork).filter((step) => hazardsOf(step).includes(caution));
  const first = naming.filter((step) => !isAgain(step));
  const again = naming.filter(isAgain);
  return [first, again].flatMap((round) => round.findLast(isPreparing) ?? round[0] ?? []);
};

/** When the fact was acknowledged; an acknowledgement from before the last time round does not hold for this one. */
const seenWith = (sheet: Sheet, caution: string, step: WorkStep): { readonly at?: string } | undefined => {
  const said = sheet.visit.acknowledged?.findLast((one) => one.caution === caution);
  if (said === undefined) return undefined;
  if (isAgain(step) && !isAfter(said.at, lineOf({ kind: step.kind, id: earlier(step.id) }, sheet.visit)?.at))
    return undefined;
  return said.at === undefined ? {} : { at: clockTime(said.at) };
};

const earlier = (id: string): string =>
  id.replace(/#(\d+)/u, (_, nth) => (nth === '2' ? '' : `#${Number(nth) - 1}`));

const isAfter = (at: string | undefined, other: string | undefined): boolean =>
  at !== undefined && (other === undefined || Date.parse(at) > Date.parse(other));

export const cautionsOf = (
  sheet: Sheet,
  steps: readonly PlanStep[],
  step: WorkStep,
): readonly CautionView[] => {
  const applying = sheet.assessment.cautions.map(({ caution }) => caution);
  const named = hazardsOf(step);
  return applying
    .filter((id) => named.includes(id))
    .flatMap((id) => sheet.family?.cautions.find((one) => one.id === id) ?? [])
    .map((definition) => cautionView(sheet, definition, steps, step));
};

const cautionView = (
  sheet: Sheet,
  { id, signal, title, does, act, fact }: CautionDefinition,
  steps: readonly PlanStep[],
  step: WorkStep,
): CautionView => {
  const seen = seenWith(sheet, id, step);
  return {
    id,
    signal: `${sheet.word(signals[signal])}. ${sheet.text(title)}.`,
    does: sheet.text(does),
    act: act.map(sheet.text),
    ...(fact === undefined ? {} : { fact: sheet.text(fact) }),
    ...(seen === undefined ? {} : { seen }),
    isDue: fact !== undefined && dueSteps(steps, id).some((due) => due.id === step.id),
  };
};

/** The first fact before this step that nobody has acknowledged. */
export const openFactBefore = (
  views: readonly { readonly id: string; readonly cautions: readonly CautionView[] }[],
): { readonly at: string; readonly fact: string } | undefined => {
  for (const { id, cautions } of views)
    for (const { isDue, fact, seen } of cautions)
      if (isDue && fact !== undefined && seen === undefined) return { at: id, fact };
  return undefined;
};
