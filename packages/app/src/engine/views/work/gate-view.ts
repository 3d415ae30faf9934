import { type Sheet, toolName } from '@brinewright/papers';
import type { PlanStep, RepairPlan } from '@brinewright/service';
import { partName } from '../repair/part-views.ts';
import { priceOf } from '../repair/prices.ts';
import type { GateView, InHandView } from './work-types.ts';

/** The gate with what can be checked off at it; none where nothing is shut. */
export const gateView = (sheet: Sheet, steps: readonly PlanStep[]): GateView | undefined => {
  const at = steps.findIndex(({ kind }) => kind === 'gate');
  const gate = steps[at];
  if (gate?.kind !== 'gate') return undefined;
  const { repair } = sheet.assessment.stages;
  const plan = repair.state === 'done' ? repair.value : undefined;
  const price = plan === undefined ? undefined : priceOf(sheet, plan);
  return {
    passed: gate.passed,
    asks: gate.asks.map(({ id, met, says }) => ({ id, met, says: sheet.say(says) })),
    before: steps[at + 1]?.id,
    kit: kitOf(sheet, plan),
    tools: toolsOf(sheet, steps, plan),
    wayBack: sheet.visit.gate?.wayBack === undefined ? '' : sheet.text(sheet.visit.gate.wayBack),
    ...(price === undefined ? {} : { price }),
  };
};

/** Parts to bring, and what is in the hand besides. */
const kitOf = (sheet: Sheet, plan: RepairPlan | undefined): readonly InHandView[] => {
  const hand = sheet.visit.gate?.kit ?? [];
  const wanted = [...(plan?.parts ?? []), ...(plan?.differs ?? []).flatMap(({ parts }) => parts)];
  return heldAgainst([...wanted.map(({ part }) => part), ...hand], hand, plan, sheet, (id) =>
    partName(sheet, id),
  );
};

/** Special tools of what is still to be done; a screwdriver is not asked for. */
const toolsOf = (
  sheet: Sheet,
  steps: readonly PlanStep[],
  plan: RepairPlan | undefined,
): readonly InHandView[] => {
  const hand = sheet.visit.gate?.tools ?? [];
  const special = new Set(sheet.family?.tools.filter((tool) => tool.special).map(({ id }) => id));
  const asked = steps.flatMap((step) => (step.kind === 'operation' && !step.done ? step.tools : []));
  return heldAgainst([...asked.filter((id) => special.has(id)), ...hand], hand, plan, sheet, (id) =>
    toolName(sheet, id),
  );
};

const heldAgainst = (
  ids: readonly string[],
  hand: readonly string[],
  plan: RepairPlan | undefined,
  sheet: Sheet,
  nameOf: (id: string) => string,
): readonly InHandView[] =>
  [...new Set(ids)].map((id) => {
    const wrong = plan?.wrong.find((one) => one.id === id);
    return {
      id,
      name: nameOf(id),
      inHand: hand.includes(id),
      ...(wrong === undefined ? {} : { wrong: sheet.say(wrong.says) }),
    };
  });
