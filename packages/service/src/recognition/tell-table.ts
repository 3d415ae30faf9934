import {
  type Family,
  fitsVariant,
  type MeasuredTell,
  type SeenTell,
  type Tell,
} from '@brinewright/equipment';
import { normalCdf } from '@brinewright/physics';
import { at } from './bayes.ts';
import type { AnswerTable } from './prospect.ts';
import { variantSpace } from './variant-space.ts';

/** Nobody's eyes are better than this: an answer makes the others unlikely, never impossible. */
const mostTrust = 0.995;

export const trustOf = (tell: Tell): number => Math.min(tell.trust, mostTrust);

/** P(answer | variant) for every answer of a tell, and which variants allow it. */
export type TellTable = AnswerTable & { readonly allows: readonly Uint8Array[] };

const tables = new WeakMap<Family, ReadonlyMap<string, TellTable>>();

/** The tables of all tells of a family, made once for each family. */
export const tellTables = (family: Family): ReadonlyMap<string, TellTable> => {
  const known = tables.get(family);
  if (known !== undefined) return known;
  const made = new Map(family.tells.map((tell) => [tell.id, tellTable(family, tell)]));
  tables.set(family, made);
  return made;
};

const tellTable = (family: Family, tell: Tell): TellTable =>
  tell.kind === 'seen' ? seenTable(family, tell) : measuredTable(family, tell);

/**
 * With S the answers that go with a variant, n all answers: trust/|S| for one in S, (1 − trust)/(n − |S|) for
 * another. A variant that no answer, or every answer, goes with takes each alike: it is not told by this tell.
 */
const seenTable = (family: Family, tell: SeenTell): TellTable => {
  const { variants } = variantSpace(family);
  const allows = tell.answers.map((answer) =>
    Uint8Array.from(variants, (variant) => (fitsVariant(answer.allows, variant) ? 1 : 0)),
  );
  const right = Float64Array.from(variants, (_, v) => allows.reduce((n, row) => n + at(row, v), 0));
  const trust = trustOf(tell);
  const n = tell.answers.length;
  const chance = (allowed: number, s: number): number => {
    if (s === 0 || s === n) return 1 / n;
    return allowed === 1 ? trust / s : (1 - trust) / (n - s);
  };
  return {
    answers: tell.answers.map(({ id }) => id),
    rows: allows.map((row) => right.map((s, v) => chance(at(row, v), s))),
    allows,
  };
};

/** Values of a feature by the size that would be found; values of one size are one answer. */
const sizeClasses = (tell: MeasuredTell): readonly { id: string; size: number; values: string[] }[] => {
  const sorted = Object.entries(tell.expected)
    .map(([value, { si }]) => ({ value, si }))
    .sort((a, b) => a.si - b.si || (a.value < b.value ? -1 : 1));
  const classes: { id: string; size: number; values: string[] }[] = [];
  for (const { value, si } of sorted) {
    const last = classes.at(-1);
    if (last !== undefined && last.size === si) last.values.push(value);
    else classes.push({ id: value, size: si, values: [value] });
  }
  return classes;
};

/** Before it is measured: the reading falls nearest to one of the sizes, spread by the uncertainty. */
const measuredTable = (family: Family, tell: MeasuredTell): TellTable => {
  const { variants } = variantSpace(family);
  const classes = sizeClasses(tell);
  const trust = trustOf(tell);
  const size = (value: string | undefined) =>
    classes.find(({ values }) => values.includes(value ?? ''))?.size;
  const rows = classes.map(({ size: mid }, place) => {
    const below = classes[place - 1]?.size;
    const above = classes[place + 1]?.size;
    const from = below === undefined ? Number.NEGATIVE_INFINITY : (below + mid) / 2;
    const to = above === undefined ? Number.POSITIVE_INFINITY : (above + mid) / 2;
    return Float64Array.from(variants, (variant) => {
      const expected = size(variant[tell.feature]);
      if (expected === undefined) return 1 / classes.length;
      const hit = normalCdf((to - expected) / tell.u.si) - normalCdf((from - expected) / tell.u.si);
      return trust * hit + (1 - trust) / classes.length;
    });
  });
  const allows = classes.map(({ values }) =>
    Uint8Array.from(variants, (variant) => (values.includes(variant[tell.feature] ?? '') ? 1 : 0)),
  );
  return { answers: classes.map(({ id }) => id), rows, allows };
};
