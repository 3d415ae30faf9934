import type { Family } from '../model/family.ts';
import type { Feature, Fits, Variant } from '../model/feature.ts';

export type WeightedVariant = { readonly variant: Variant; readonly weight: number };

/** More than this is a slip in a definition: features are few, and `never` says what is not made. */
export const mostVariants = 20_000;

/** How many assignments the features have, before `never` takes some away. */
export const assignments = (features: readonly Feature[]): number =>
  features.reduce((product, feature) => product * feature.values.length, 1);

/**
 * All variants that the family's constraints allow, with their weights before anything was seen.
 *
 * Weights are the product of the features' and sum to 1. A family without features has one variant.
 * @throws RangeError where there are more than `mostVariants` (a compiled family has fewer).
 */
export const variantsOf = (family: Pick<Family, 'features' | 'never'>): readonly WeightedVariant[] => {
  if (assignments(family.features) > mostVariants) throw new RangeError('too-many-variants');
  let all: readonly WeightedVariant[] = [{ variant: {}, weight: 1 }];
  for (const feature of family.features) all = all.flatMap((one) => extended(one, feature));
  const allowed = all.filter(({ variant }) => !family.never.some((never) => matches(never, variant)));
  const sum = allowed.reduce((total, { weight }) => total + weight, 0);
  return sum > 0 ? allowed.map(({ variant, weight }) => ({ variant, weight: weight / sum })) : [];
};

const extended = ({ variant, weight }: WeightedVariant, feature: Feature): readonly WeightedVariant[] =>
  feature.values.map((value) => ({
    variant: { ...variant, [feature.id]: value.id },
    weight: weight * value.weight,
  }));

/** Here a feature that the variant lacks does not match: `never` speaks of features it names. */
const matches = (never: Fits, variant: Variant): boolean =>
  Object.entries(never).every(([feature, values]) => values.includes(variant[feature] ?? ''));
