import type { Sheet } from '@brinewright/papers';
import type { RepairPlan } from '@brinewright/service';
import { partName } from './part-views.ts';
import type { StockView } from './repair-types.ts';

/** What is looked for in the van: the parts of the plan and of its builds, and all that was listed before. */
export const stockViews = (sheet: Sheet, plan: RepairPlan | undefined): readonly StockView[] => {
  const listed = sheet.visit.stock ?? [];
  const wanted = [...(plan?.parts ?? []), ...(plan?.differs ?? []).flatMap(({ parts }) => parts)];
  const ids = new Set([...wanted.map(({ part }) => part), ...listed.map(({ part }) => part)]);
  return [...ids].map((part) => {
    const number = sheet.family?.parts.find(({ id }) => id === part)?.number;
    const count = listed.find((line) => line.part === part)?.count;
    return {
      part,
      name: partName(sheet, part),
      ...(number === undefined ? {} : { number }),
      ...(count === undefined ? {} : { count }),
    };
  });
};
