import type { Operation } from '@brinewright/equipment';
import type { Ways } from './closure.ts';
import { operationsByClass } from './covering.ts';
import { byText, isReversible, isStrip, roundTripMinutes, sortedById } from './operation-kinds.ts';
import type { Scope } from './scope.ts';

/** Whether something is off now, or done where nothing comes off for it. */
export type IsThere = (id: string) => boolean;

type Having = ReadonlyMap<string, Operation>;
type Search = {
  readonly having: Having;
  readonly isThere: IsThere;
  /** Entered before it is settled, so that operations that wait for one another come to an end. */
  readonly known: Map<string, readonly Operation[]>;
};

/**
 * What must have come off before an operation could be done and is not off: one way of what it comes after, and so on
 * back, for every class of variants. The way of which most is there already, then the quickest. What came off first
 * stands first. Shutting, venting and recording are never taken as done: the plan does them anew.
 */
export const cameOffBefore = (scope: Scope, operation: Operation, isThere: IsThere): readonly Operation[] => {
  if (hasWhole(operation.after, isThere)) return [];
  const classes = operationsByClass(scope);
  const own = classes.filter((having) => having.has(operation.id));
  const lacking = (own.length > 0 ? own : classes).flatMap((having) =>
    lackingFor({ having, isThere, known: new Map() }, operation),
  );
  return inOrder(scope, new Set(lacking.filter((one) => one !== operation)));
};

/** What one class adds to another goes where it belongs: before whatever comes after it by any way. */
const inOrder = ({ operations }: Scope, found: ReadonlySet<Operation>): readonly Operation[] => {
  if (found.size < 2) return [...found];
  const order: Operation[] = [];
  const seen = new Set<Operation>();
  const place = (operation: Operation): void => {
    if (seen.has(operation)) return;
    seen.add(operation);
    for (const id of operation.after.flat()) {
      const before = operations.get(id);
      if (before !== undefined) place(before);
    }
    if (found.has(operation)) order.push(operation);
  };
  for (const operation of sortedById(found)) place(operation);
  return order;
};

const hasWhole = (ways: Ways, isThere: IsThere): boolean =>
  ways.length === 0 || ways.some((way) => way.every(isThere));

const lackingFor = (search: Search, operation: Operation): readonly Operation[] => {
  const known = search.known.get(operation.id);
  if (known !== undefined) return known;
  search.known.set(operation.id, []);
  const lacking = hasWhole(operation.after, search.isThere) ? [] : lackingOf(search, operation);
  search.known.set(operation.id, lacking);
  return lacking;
};

const lackingOf = (search: Search, { after }: Operation): readonly Operation[] => {
  const [best] = possible(after, search.having)
    .map((way) => ({
      lacking: lackingOn(search, way),
      there: way.filter(search.isThere).length,
      key: way.join(),
    }))
    .map((way) => ({ ...way, minutes: way.lacking.reduce((sum, one) => sum + roundTripMinutes(one), 0) }))
    .sort((a, b) => b.there - a.there || a.minutes - b.minutes || byText(a.key, b.key));
  return best?.lacking ?? [];
};

/** An alternative with an operation this variant lacks gives way to one without. */
const possible = (ways: Ways, having: Having): Ways => {
  const whole = ways.filter((way) => way.every((id) => having.has(id)));
  return whole.length > 0 ? whole : ways.map((way) => way.filter((id) => having.has(id)));
};

const lackingOn = (search: Search, way: readonly string[]): readonly Operation[] => {
  const lacking = [...way].sort(byText).flatMap((id) => {
    const operation = search.having.get(id);
    if (operation === undefined || search.isThere(id)) return [];
    const before = lackingFor(search, operation);
    return comesOff(operation) ? [...before, operation] : before;
  });
  return [...new Set(lacking)];
};

export const comesOff = (operation: Operation): boolean => isStrip(operation) && isReversible(operation);
