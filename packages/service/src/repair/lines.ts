import type { Family } from '@brinewright/equipment';
import type { Recognition } from '../recognition/recognition.ts';
import type { Situation } from '../situation/situation.ts';
import { byThenId } from '../stage/rank.ts';
import { type Bill, billFor, type Wanted } from './parts-for.ts';
import type { PartLine, Remaining, RepairPlan } from './repair.ts';

/** A bill this unlikely no longer decides what is brought: recognition calls the rest decided. */
const negligible = 0.05;

export type Billed = readonly {
  readonly variant: Remaining[number]['variant'];
  readonly p: number;
  readonly bill: Bill;
}[];

const billKey = (bill: Bill): string =>
  [...bill]
    .map(([id, count]) => `${id}*${count}`)
    .toSorted()
    .join();

/** What each remaining variant takes, without the bills that are too unlikely taken together by what they hold. */
export const billsOf = (family: Family, remaining: Remaining, wanted: Wanted): Billed => {
  const bills = remaining.map(({ variant, p }) => ({
    variant,
    p,
    bill: billFor(family, variant, wanted),
  }));
  const shares = new Map<string, number>();
  for (const { bill, p } of bills) shares.set(billKey(bill), (shares.get(billKey(bill)) ?? 0) + p);
  const kept = bills.filter(({ bill }) => (shares.get(billKey(bill)) ?? 0) > negligible);
  return kept.length > 0 ? kept : bills;
};

const line = (s: Situation, id: string, count: number, p: number): readonly PartLine[] => {
  const part = s.family.parts.find((candidate) => candidate.id === id);
  if (part === undefined) return [];
  const have = s.visit.stock?.find((held) => held.part === id)?.count;
  return [
    {
      part: id,
      role: part.is,
      count,
      p,
      ...(part.price === undefined ? {} : { price: part.price }),
      ...(have === undefined ? {} : { have }),
    },
  ];
};

/** What every build that matters takes. */
export const sharedLines = (s: Situation, bills: Billed): readonly PartLine[] => {
  const first = bills[0]?.bill ?? new Map<string, number>();
  return [...first]
    .filter(([id, count]) => bills.every(({ bill }) => bill.get(id) === count))
    .flatMap(([id, count]) => line(s, id, count, 1));
};

/** Groups of variants by what they take beyond the shared parts. */
export const differingLines = (
  s: Situation,
  bills: Billed,
  recognition: Recognition | undefined,
): RepairPlan['differs'] => {
  const shared = new Set(sharedLines(s, bills).map(({ part }) => part));
  const groups = new Map<string, { p: number; bill: Bill; variants: Billed[number]['variant'][] }>();
  for (const { variant, p, bill } of bills) {
    const rest = [...bill].filter(([id]) => !shared.has(id));
    const key = billKey(new Map(rest));
    const group = groups.get(key) ?? { p: 0, bill: new Map(rest), variants: [] };
    groups.set(key, { ...group, p: group.p + p, variants: [...group.variants, variant] });
  }
  if (groups.size < 2) return [];
  const tell = recognition?.next[0]?.tell.id;
  return [...groups.values()]
    .toSorted(
      byThenId(
        ({ p }) => p,
        ({ bill }) => [...bill.keys()].join(),
      ),
    )
    .map(({ p, bill, variants }) => ({
      when: agreed(variants),
      parts: [...bill].flatMap(([id, count]) => line(s, id, count, p)),
      ...(tell === undefined ? {} : { tell }),
    }));
};

/** The feature values that all variants of a group share. */
const agreed = (variants: readonly Billed[number]['variant'][]): Readonly<Record<string, string>> => {
  const first = variants[0] ?? {};
  return Object.fromEntries(
    Object.entries(first).filter(([feature, value]) =>
      variants.every((variant) => variant[feature] === value),
    ),
  );
};
