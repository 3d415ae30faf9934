import type { Family } from '@brinewright/equipment';
import { type Message, type MessageKey, type MessageValue, message } from '@brinewright/words';
import type { StackCount } from './work-plan.ts';

export type Direction = 'out' | 'in';

type Counted = Readonly<Record<string, number>>;

/**
 * The stack as its ordered list says: out from the mouth of the bore, in the other way round. What was counted
 * agrees when every kind of piece does.
 */
export const stackCount = (family: Family, direction: Direction, counted?: Counted): StackCount => {
  const pieces = direction === 'out' ? family.stack : [...family.stack].reverse();
  const totals = totalsOf(family);
  if (counted === undefined) return { pieces, totals };
  return { pieces, totals, counted, agrees: firstOff(totals, counted) === undefined };
};

const totalsOf = ({ stack }: Family): Counted => {
  const totals: Record<string, number> = {};
  for (const { is } of stack) totals[is] = (totals[is] ?? 0) + 1;
  return totals;
};

const firstOff = (totals: Counted, counted: Counted): string | undefined =>
  [...new Set([...Object.keys(totals), ...Object.keys(counted)])].find(
    (kind) => (totals[kind] ?? 0) !== (counted[kind] ?? 0),
  );

/** Why a count stops the plan, and how the piece is found. Undefined when it agrees or was not taken. */
export const miscount = (
  direction: Direction,
  count: StackCount | undefined,
): { readonly why: Message; readonly mend: Message } | undefined => {
  if (count?.counted === undefined || count.agrees !== false) return undefined;
  const kind = firstOff(count.totals, count.counted);
  if (kind === undefined) return undefined;
  const counted = count.counted[kind] ?? 0;
  const listed = count.totals[kind] ?? 0;
  const which = `${direction}-${counted > listed ? 'extra' : 'missing'}` as const;
  return {
    why: message(`plan.miscount.${which}`, { piece: pieceName(kind), counted, listed }),
    mend: message(`plan.miscount-mend.${which}`),
  };
};

const pieceNames: Readonly<Record<string, MessageKey>> = {
  seal: 'plan.piece.seal',
  spacer: 'plan.piece.spacer',
  ring: 'plan.piece.ring',
  plug: 'plan.piece.plug',
};

const pieceName = (kind: string): MessageValue => {
  const key = pieceNames[kind];
  return key === undefined ? kind : message(key);
};
