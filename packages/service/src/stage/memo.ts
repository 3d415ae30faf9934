import type { Stages } from '../assessment.ts';

type Slot<K extends keyof Stages> = { readonly key: string; readonly value: Stages[K] };

/** Results of the last assessment by stage, each with the inputs it was made from. */
export type Memo = { [K in keyof Stages]?: Slot<K> };

export const newMemo = (): Memo => ({});

/** One slot a stage is enough: a visit changes step by step. The inputs are plain data in a fixed order. */
export const remember = <K extends keyof Stages>(
  memo: Memo | undefined,
  stage: K,
  inputs: unknown,
  run: () => Stages[K],
): Stages[K] => {
  if (memo === undefined) return run();
  const key = JSON.stringify(inputs, plainly);
  const slot: Slot<K> | undefined = memo[stage];
  if (slot?.key === key) return slot.value;
  const made: Slot<K> = { key, value: run() };
  const slots: { [L in K]?: Slot<L> } = memo;
  slots[stage] = made;
  return made.value;
};

const plainly = (_key: string, value: unknown): unknown =>
  value instanceof Float64Array ? [...value] : value;
