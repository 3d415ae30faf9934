import type { Fits } from '@brinewright/equipment';
import { type Message, message, type Text } from '@brinewright/words';
import { fitsTitled } from '../repair/titles.ts';
import { listed } from './gate.ts';
import type { Scope } from './scope.ts';
import type { PlanStep } from './work-plan.ts';

/** Which operations only some of the remaining variants have, gathered by what they go with. */
export const whenSaid = ({ family }: Scope, steps: readonly PlanStep[]): readonly Message[] => {
  const groups = new Map<string, { readonly fits: Fits; readonly orders: readonly Text[] }>();
  for (const step of steps) {
    if (step.kind !== 'operation' || step.when === undefined) continue;
    const key = JSON.stringify(step.when);
    const orders = groups.get(key)?.orders ?? [];
    groups.set(key, { fits: step.when, orders: [...orders, step.operation.order] });
  }
  return [...groups.values()].map(({ fits, orders }) =>
    message('plan.says.only-when', { when: fitsTitled(family, fits), orders: listed(orders) }),
  );
};
