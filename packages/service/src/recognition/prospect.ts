import { at, sum } from './bayes.ts';

/** A question put to hypotheses: per answer, how likely it is under each of them. */
export type AnswerTable = { readonly answers: readonly string[]; readonly rows: readonly Float64Array[] };

/** Hypotheses gathered in groups that need not be told apart: the group of each, by number. */
export type Grouping = { readonly of: Int32Array; readonly count: number };

/** What asking would be worth: expected loss of entropy about the groups, and what each answer leaves. */
export type Prospect = {
  readonly bits: number;
  readonly answers: readonly { readonly p: number; readonly groups: Float64Array }[];
};

export const prospect = (odds: ArrayLike<number>, grouping: Grouping, table: AnswerTable): Prospect => {
  const answers = table.rows.map((row) => ifAnswered(odds, grouping, row));
  const left = answers.reduce((total, { p, groups }) => total + p * entropy(groups), 0);
  return { bits: Math.max(0, entropy(groupOdds(odds, grouping)) - left), answers };
};

const ifAnswered = (odds: ArrayLike<number>, grouping: Grouping, row: Float64Array) => {
  const groups = new Float64Array(grouping.count);
  for (let h = 0; h < row.length; h++) {
    const group = at(grouping.of, h);
    groups[group] = at(groups, group) + at(odds, h) * at(row, h);
  }
  const p = sum(groups);
  for (let g = 0; g < groups.length; g++) groups[g] = p > 0 ? at(groups, g) / p : 0;
  return { p, groups };
};

export const groupOdds = (odds: ArrayLike<number>, grouping: Grouping): Float64Array => {
  const groups = new Float64Array(grouping.count);
  for (let h = 0; h < grouping.of.length; h++) {
    const group = at(grouping.of, h);
    groups[group] = at(groups, group) + at(odds, h);
  }
  return groups;
};

/** Entropy in bits. */
export const entropy = (odds: Float64Array): number => {
  let bits = 0;
  for (let g = 0; g < odds.length; g++) {
    const p = at(odds, g);
    if (p > 0) bits -= p * Math.log2(p);
  }
  return bits;
};

/** Gathers hypotheses by key; groups are numbered in order of first appearance. */
export const groupBy = (keys: readonly string[]): Grouping & { readonly keys: readonly string[] } => {
  const numbers = new Map<string, number>();
  const of = Int32Array.from(keys, (key) => {
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  });
  return { of, count: numbers.size, keys: [...numbers.keys()] };
};
