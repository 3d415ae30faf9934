import type { Sheet } from '@brinewright/papers';
import type { RepairPlan } from '@brinewright/service';
import { quantity } from '@brinewright/units';
import { formatQuantity } from '@brinewright/words';

export const moneyName = (sheet: Sheet, amount: number): string =>
  formatQuantity(quantity('money', amount), sheet.reader).text;

/** All parts that every build takes, together; none where one of them has no price. */
export const priceOf = (sheet: Sheet, { parts }: RepairPlan): string | undefined => {
  if (parts.length === 0 || parts.some(({ price }) => price === undefined)) return undefined;
  return moneyName(
    sheet,
    parts.reduce((sum, { price = 0, count }) => sum + price * count, 0),
  );
};
