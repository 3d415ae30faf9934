import type { Issue } from '@brinewright/words';
import type { TellAnswer } from '../visit/schema.ts';
import type { Doubt } from './recognition.ts';

/** One thing heard about the variant. */
export type Evidence = {
  readonly is: Doubt;
  readonly likelihood: Float64Array;
  /** Variants that would not give this answer. */
  readonly denied: Uint8Array;
  /** How many times likelier it is that the answer is wrong than that it is right. */
  readonly wrong: number;
};

export type Heard = { readonly evidence: readonly Evidence[]; readonly issues: readonly Issue[] };

export const nothingHeard: Heard = { evidence: [], issues: [] };

export const wrongAgainstRight = (trust: number): number => Math.min(1, (1 - trust) / trust);

/** An unsure answer counts for a third of a sure one; ours. */
const unsureWeight = 1 / 3;

/** An answer as evidence, weakened where it is a guess. */
export const answered = (
  answer: TellAnswer,
  likelihood: Float64Array,
  denied: Uint8Array,
  trust: number,
): Evidence => {
  const weight = answer.unsure === true ? unsureWeight : 1;
  return {
    is: { from: 'tell', tell: answer.tell, answer: answer.answer },
    likelihood: weight === 1 ? likelihood : likelihood.map((p) => p ** weight),
    denied,
    wrong: wrongAgainstRight(trust) ** weight,
  };
};

const idOf = ({ is, wrong }: Evidence): string =>
  [is.from, is.from === 'tell' ? is.tell : is.feature, is.answer, wrong].join('\n');

/** Sorted, so that the order of answers changes no bit; the same thing heard twice counts once. */
export const sortedOnce = (all: readonly Evidence[]): readonly Evidence[] => {
  const byId = new Map(all.map((evidence) => [idOf(evidence), evidence]));
  return [...byId.keys()].sort().flatMap((id) => byId.get(id) ?? []);
};
