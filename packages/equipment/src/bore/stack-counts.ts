import type { StackPiece } from '../model/bore.ts';
import type { Family } from '../model/family.ts';
import type { Part } from '../model/part.ts';

export type StackCounts = Readonly<Record<StackPiece['is'], number>>;

/** How many pieces of each kind the stack has: what is counted out and in. */
export const stackCounts = (family: Pick<Family, 'stack'>): StackCounts => {
  const count = (is: StackPiece['is']): number => family.stack.filter((piece) => piece.is === is).length;
  return { seal: count('seal'), spacer: count('spacer'), ring: count('ring'), plug: count('plug') };
};

/** How many of a part the valve takes: from the stack where the part belongs to it, else as the definition says. */
export const partCount = (part: Part, family: Pick<Family, 'stack'>): number => {
  const named = family.stack.filter((piece) => piece.part === part.id).length;
  if (named > 0) return named;
  const ofRole = family.stack.filter((piece) => piece.is === part.is && piece.part === undefined).length;
  return ofRole > 0 ? ofRole : part.count;
};
