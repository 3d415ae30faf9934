import { type Draft, type Entry, type Heads, type Sealed, seal } from '@brinewright/journal';

/** Who writes, when and with what; the numbers come from the store. */
export type Hand = {
  readonly company: string;
  readonly author: string;
  readonly wall: string;
  readonly zone: string;
  readonly app: string;
  readonly newId: () => string;
};

/** Drafts as entries of the store's own device, each having seen all that was there before it (J2, J3, J4). */
export const compose = (heads: Heads, drafts: readonly Draft[], hand: Hand): readonly Sealed[] => {
  const numbers = new Map<string, number>();
  return drafts.map((draft, place) => {
    const vector = heads.vectors.get(draft.stream);
    const seq = (numbers.get(draft.stream) ?? vector?.get(heads.device) ?? 0) + 1;
    numbers.set(draft.stream, seq);
    const { newId, ...by } = hand;
    const entry: Entry = {
      ...draft,
      ...by,
      id: newId(),
      device: heads.device,
      seq,
      lamport: heads.lamport + 1 + place,
      seen: seenOf(heads, draft.stream),
    };
    return seal(entry);
  });
};

const seenOf = ({ device, vectors }: Heads, stream: string): Readonly<Record<string, number>> =>
  Object.fromEntries([...(vectors.get(stream) ?? [])].filter(([other, seq]) => other !== device && seq > 0));
