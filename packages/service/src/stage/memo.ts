import type { Stages } from '../assessment.ts';
import type { Work } from './work.ts';

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
  const { value, keep } = recall(memo, stage, inputs);
  return value ?? keep(run());
};

/** The same for long work: its progress goes through. */
export function* rememberWork<K extends keyof Stages>(
  memo: Memo | undefined,
  stage: K,
  inputs: unknown,
  work: () => Work<Stages[K]>,
): Work<Stages[K]> {
  const { value, keep } = recall(memo, stage, inputs);
  return value ?? keep(yield* work());
}

const recall = <K extends keyof Stages>(
  memo: Memo | undefined,
  stage: K,
  inputs: unknown,
): { readonly value?: Stages[K]; readonly keep: (value: Stages[K]) => Stages[K] } => {
  if (memo === undefined) return { keep: (value) => value };
  const key = JSON.stringify(inputs, plainly);
  const slots: { [L in K]?: Slot<L> } = memo;
  const keep = (value: Stages[K]): Stages[K] => {
    slots[stage] = { key, value };
    return value;
  };
  const slot = slots[stage];
  return slot?.key === key ? { value: slot.value, keep } : { keep };
};

const plainly = (_key: string, value: unknown): unknown =>
  value instanceof Float64Array ? [...value] : value;
