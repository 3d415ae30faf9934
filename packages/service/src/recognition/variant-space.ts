import { type Family, type Variant, variantsOf } from '@brinewright/equipment';
import { byThenId } from '../stage/rank.ts';
import { at, posterior, sum } from './bayes.ts';
import type { Belief, VariantSpace } from './recognition.ts';

/** A variant counts as ruled out when what was seen speaks twenty times better for another … */
const ruledOut = 1 / 20;

/** … and it is less likely than this all the same. */
export const worthReckoning = 0.05;

const spaces = new WeakMap<Family, VariantSpace>();

/** All variants of a family, each with the product of its features' weights; made once for each family. */
export const variantSpace = (family: Family): VariantSpace => {
  const known = spaces.get(family);
  if (known !== undefined) return known;
  const made = enumerated(family);
  spaces.set(family, made);
  return made;
};

const enumerated = (family: Family): VariantSpace => {
  const rows = variantsOf(family);
  const variants = rows.map(({ variant }) => variant);
  const prior = Float64Array.from(rows, ({ weight }) => weight);
  const ids = variants.map((variant) => variantId(family, variant));
  const remaining = (belief: Belief) => supported(prior, belief);
  return {
    variants,
    weights: (evidence) => ({ odds: posterior(prior, evidence) }),
    remaining,
    count: (belief) => remaining(belief).length,
    top: (belief, n) => {
      const best = byThenId(
        (v: number) => at(belief.odds, v),
        (v) => ids[v] ?? '',
      );
      const first = [...variants.keys()].sort(best).slice(0, n);
      return first.flatMap((v) => ({ variant: variants[v] ?? {}, p: at(belief.odds, v) }));
    },
    marginal: (belief, of) => marginalOf(variants, belief, of),
  };
};

/** The variant's values in the order of the family's features; breaks ties. */
const variantId = (family: Family, variant: Variant): string =>
  family.features.map(({ id }) => variant[id]).join(',');

/** Variants that what was seen leaves, however rare they were before, and those that are likely all the same. */
const supported = (prior: Float64Array, { odds }: Belief): readonly number[] => {
  const likely = worthReckoning * sum(odds);
  const support = prior.map((p, v) => (p > 0 ? at(odds, v) / p : 0));
  const best = support.reduce((a, b) => Math.max(a, b), 0);
  const least = ruledOut * best * (1 - 1e-9);
  return [...support.keys()].filter((v) => at(support, v) >= least || at(odds, v) >= likely);
};

const marginalOf = (
  variants: readonly Variant[],
  belief: Belief,
  of: (variant: Variant) => string,
): ReadonlyMap<string, number> => {
  const odds = new Map<string, number>();
  for (const [v, variant] of variants.entries()) {
    const key = of(variant);
    odds.set(key, (odds.get(key) ?? 0) + at(belief.odds, v));
  }
  return odds;
};
