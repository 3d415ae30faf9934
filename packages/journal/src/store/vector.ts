import type { Vector } from './journal-store.ts';

/** Of each device the highest n such that its numbers 1…n are there (J3). */
export const vectorOf = (entries: readonly { readonly device: string; readonly seq: number }[]): Vector => {
  const numbers = Map.groupBy(entries, ({ device }) => device);
  const ends = [...numbers].map(([device, held]) => [device, endOfRun(held.map(({ seq }) => seq))] as const);
  return new Map(ends.filter(([, end]) => end > 0));
};

const endOfRun = (numbers: readonly number[]): number => {
  const held = new Set(numbers);
  let end = 0;
  while (held.has(end + 1)) end += 1;
  return end;
};
