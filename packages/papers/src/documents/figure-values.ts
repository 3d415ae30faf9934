import type { FigureId } from '@brinewright/service';
import { type Quantity, shownUnit } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';
import { unitFor } from './derivation.ts';
import type { Sheet } from './sheet.ts';

/** The quantity of a figure, where the assessment has it. */
export const quantityAt = ({ assessment }: Sheet, id: FigureId | undefined): Quantity | undefined =>
  id !== undefined && Object.hasOwn(assessment.figures, id) ? assessment.figures[id]?.quantity : undefined;

export const isFlow = (value: Quantity | undefined): value is Quantity<'flow'> => value?.kind === 'flow';
export const isTime = (value: Quantity | undefined): value is Quantity<'time'> => value?.kind === 'time';
export const isLength = (value: Quantity | undefined): value is Quantity<'length'> =>
  value?.kind === 'length';

const bySize = (a: Quantity, b: Quantity): number => Math.abs(b.si) - Math.abs(a.si);

/** From here up cents say nothing beside a sum. */
const wholeFrom = 100;

/** Figures that are compared with one another: all in the unit of the largest, and money all with cents or all without. */
export const alike = (
  sheet: Sheet,
  ids: readonly (FigureId | undefined)[],
): readonly (string | undefined)[] => {
  const quantities = ids.map((id) => quantityAt(sheet, id));
  const [largest] = quantities.filter((one) => one !== undefined).toSorted(bySize);
  if (largest === undefined) return quantities.map(() => undefined);
  const whole = largest.kind === 'money' && Math.abs(largest.si) >= wholeFrom;
  const { symbol } = shownUnit(largest.kind, sheet.reader.system, largest.si);
  return quantities.map((one, index) => {
    if (one === undefined) return undefined;
    const unit = unitFor(sheet, ids[index] ?? '') ?? symbol;
    const value = whole ? { kind: one.kind, si: Math.round(one.si) } : one;
    return formatQuantity(value, { ...sheet.reader, unit: largest.kind === 'money' ? undefined : unit }).text;
  });
};
