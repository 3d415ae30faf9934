import type { Family, Fits, Variant } from '@brinewright/equipment';
import type { Situation } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';
import { type Grouping, groupBy } from './prospect.ts';
import type { Target } from './recognition.ts';
import { type Measured, ratedFeatures, signature } from './signature.ts';
import { variantSpace } from './variant-space.ts';

/** Variants gathered by signature; `keys` are the signatures. */
export type DecisionGroups = Grouping & { readonly keys: readonly string[] };

type Kept = { readonly asked: string; readonly groups: DecisionGroups };
const kept = new WeakMap<Family, Kept>();

/** The groups that matter for these targets; the last asked for are kept with the family. */
export const decisionGroups = (
  family: Family,
  targets: readonly Target[],
  measured: Measured,
): DecisionGroups => {
  const asked = JSON.stringify([targets, [...measured].sort()]);
  const known = kept.get(family);
  if (known?.asked === asked) return known.groups;
  const groups = groupBy(signatures(family, targets, measured));
  kept.set(family, { asked, groups });
  return groups;
};

/** A signature depends on few features: it is made once for each combination of their values. */
const signatures = (family: Family, targets: readonly Target[], measured: Measured): readonly string[] => {
  const features = featuresThatMatter(family, targets);
  const made = new Map<string, string>();
  return variantSpace(family).variants.map((variant) => {
    const key = features.map((feature) => variant[feature]).join(',');
    const known = made.get(key) ?? signature(variant, family, targets, measured);
    made.set(key, known);
    return known;
  });
};

const featuresThatMatter = (family: Family, targets: readonly Target[]): readonly string[] => {
  const fits: readonly Fits[] = [...family.parts, ...family.operations, ...family.tools].map((x) => x.fits);
  const converted = targets.flatMap((target) => (target.kind === 'convert' ? target.feature : []));
  const named = new Set([
    ...fits.flatMap(Object.keys),
    ...converted,
    ...ratedFeatures,
    stockIds.features.water,
  ]);
  return family.features.map(({ id }) => id).filter((id) => named.has(id));
};

/** Fitted features whose rates were measured on this unit. */
export const measuredRates = ({ subject: { measured } }: Situation): Measured => {
  const known = new Set<string>();
  if (measured?.draw !== undefined && measured['slow-rinse'] !== undefined) known.add('injector');
  if (measured?.backwash !== undefined) known.add('drain');
  if (measured?.refill !== undefined) known.add('refill');
  return known;
};

/** Values that occur among these variants, for features where not all of them do. */
export const fitsOf = (family: Family, variants: readonly Variant[]): Fits =>
  Object.fromEntries(
    family.features.flatMap(({ id, values }) => {
      const met = values.map((value) => value.id).filter((value) => variants.some((v) => v[id] === value));
      return met.length < values.length ? [[id, met]] : [];
    }),
  );
