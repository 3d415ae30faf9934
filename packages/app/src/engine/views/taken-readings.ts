import type { Sheet } from '@brinewright/papers';
import { takenTogether, wildIssue } from '@brinewright/service';
import { enteredAs, parseQuantity, type QuantityKind } from '@brinewright/units';
import { formatQuantity, type Text } from '@brinewright/words';
import type { ReadingAsk, TakenReading } from './reading-ask.ts';

/** A reading as a visit holds it, of a test or of a check. */
export type Written = {
  readonly entry?: string | undefined;
  readonly value?: string | undefined;
  readonly state?: string | undefined;
};

/** Readings of one thing, each as it was entered; those too far out to be the same thing are marked. */
export const takenReadings = (
  sheet: Sheet,
  of: { readonly title: Text; readonly kind: QuantityKind | undefined; readonly u: number | undefined },
  written: readonly Written[],
  stateName: (state: string) => string,
): Pick<ReadingAsk, 'taken' | 'wild'> => {
  const read = written.map((one) => ({ one, si: siOf(one, of.kind) }));
  const values = read.flatMap(({ si }) => si ?? []);
  const wild = takenTogether(values, of.u ?? Number.MIN_VALUE)?.wild ?? [];
  let place = -1;
  const taken = read.map(({ one, si }): TakenReading => {
    if (si !== undefined) place += 1;
    return takenOf(sheet, of.kind, one, si !== undefined && wild.includes(place), stateName);
  });
  if (wild.length === 0) return { taken };
  const issue = wildIssue(['readings'], of.title, wild.length, values.length);
  return {
    taken,
    wild: { says: sheet.say(issue.message), mend: issue.mend === undefined ? '' : sheet.say(issue.mend) },
  };
};

const siOf = ({ value }: Written, kind: QuantityKind | undefined): number | undefined => {
  if (value === undefined || kind === undefined) return undefined;
  const parsed = parseQuantity(value, kind);
  return parsed.ok ? parsed.quantity.si : undefined;
};

const takenOf = (
  sheet: Sheet,
  kind: QuantityKind | undefined,
  { entry, value, state }: Written,
  isWild: boolean,
  stateName: (state: string) => string,
): TakenReading => {
  const parsed = value === undefined || kind === undefined ? undefined : parseQuantity(value, kind);
  if (value === undefined || parsed?.ok !== true)
    return { entry, text: value ?? stateName(state ?? ''), isWild, state };
  const quantity = { ...parsed.quantity, as: value };
  const entered = enteredAs(quantity);
  const shown = formatQuantity(quantity, sheet.reader);
  return {
    entry,
    text: shown.text,
    isWild,
    figure: entered?.figure ?? shown.figure,
    unit: entered?.row.symbol,
  };
};
