import { operationName, type Sheet, tellName, valueName, wordOf } from '@brinewright/papers';
import type { RepairPlan, Target } from '@brinewright/service';
import type { Made } from '../made.ts';
import { sheetOf } from './figure-view.ts';
import { alone } from './names.ts';
import { conversionOptions, faultOptions } from './repair/decisions.ts';
import { partName, partView } from './repair/part-views.ts';
import { priceOf } from './repair/prices.ts';
import type { DifferingView, RepairView } from './repair/repair-types.ts';
import { stockViews } from './repair/stock.ts';

export type { RepairView } from './repair/repair-types.ts';

/** Parts that fit what was built, line by line, and what else can be decided about the repair. */
export const repairView = (made: Made): RepairView => {
  const sheet = sheetOf(made);
  const { repair } = made.assessment.stages;
  const plan = repair.state === 'done' ? repair.value : undefined;
  return {
    ...planned(sheet, plan),
    state: repair.state,
    gaps: repair.gaps.map(({ message }) => sheet.say(message)),
    remarks: repair.issues.map(({ message, mend }) => ({
      says: sheet.say(message),
      ...(mend === undefined ? {} : { mend: sheet.say(mend) }),
    })),
    faults: faultOptions(sheet),
    conversions: conversionOptions(sheet),
    stock: stockViews(sheet, plan),
    catalogue: (sheet.family?.parts ?? []).map(({ id, number }) => ({
      id,
      name: [partName(sheet, id), number].filter((words) => words !== undefined).join(', '),
    })),
    kit: sheet.visit.gate?.kit ?? [],
  };
};

type Planned = Omit<
  RepairView,
  'state' | 'gaps' | 'remarks' | 'faults' | 'conversions' | 'stock' | 'catalogue' | 'kit'
>;

const planned = (sheet: Sheet, plan: RepairPlan | undefined): Planned => {
  const targets = plan?.targets ?? [];
  const total = plan === undefined ? undefined : priceOf(sheet, plan);
  return {
    advice: (plan?.advice ?? []).map(sheet.say),
    targets: targets.map((target) => targetName(sheet, target)),
    parts: (plan?.parts ?? []).map((line) => partView(sheet, line)),
    differs: (plan?.differs ?? []).map((one) => differing(sheet, one)),
    covers: coverOf(sheet, plan),
    substitutes: (plan?.substitutes ?? []).map(({ says }) => sheet.say(says)),
    setsProgram: targets.some(({ kind }) => kind === 'settings'),
    refused: (plan?.refused ?? []).map(sheet.say),
    wrong: (plan?.wrong ?? []).map(({ id, says }) => ({ id, says: sheet.say(says) })),
    ...(total === undefined ? {} : { total }),
  };
};

const coverOf = (sheet: Sheet, plan: RepairPlan | undefined): RepairView['covers'] => {
  const { recognition, situation } = sheet.assessment.stages;
  return {
    builds: recognition.state === 'done' ? recognition.value.remaining : 0,
    isWhole: (plan?.differs ?? []).length === 0,
    isDescribed: situation.state === 'done' && situation.value.described,
  };
};

const differing = (sheet: Sheet, { when, parts, tell }: RepairPlan['differs'][number]): DifferingView => ({
  when: Object.entries(when)
    .map(([feature, value]) => valueName(sheet, feature, value))
    .join(', '),
  parts: parts.map((line) => partView(sheet, line)),
  ...(tell === undefined ? {} : { tell: tellName(sheet, tell) }),
});

const targetName = (sheet: Sheet, target: Target): string => {
  switch (target.kind) {
    case 'replace':
      return sheet.word('plan.leave.new-part', { part: wordOf(sheet, 'role', target.role) });
    case 'operation':
      return operationName(sheet, target.operation);
    case 'settings':
      return alone(sheet.word('plan.target.settings'));
    case 'convert':
      return alone(valueName(sheet, target.feature, target.to));
  }
};
