import type { Text } from '@brinewright/words';

/** A way in which valves of one family differ: body size, what the outlet does meanwhile, injector … */
export type Feature = {
  readonly id: string;
  readonly title: Text;
  /** Weights sum to 1; a plain list in a definition gives equal ones. */
  readonly values: readonly FeatureValue[];
};

export type FeatureValue = { readonly id: string; readonly title: Text; readonly weight: number };

/** One assignment of all features that the family's constraints allow. */
export type Variant = Readonly<Record<string, string>>;

/** What a part, tool, operation or answer goes with: per feature the values allowed. Empty fits every variant. */
export type Fits = Readonly<Record<string, readonly string[]>>;

/** What a family that does not say is taken as: a cold-water valve. */
const unsaid: Variant = { water: 'cold' };

/** A feature that the variant does not have (a merged definition may name more) restricts nothing. */
export const fitsVariant = (fits: Fits, variant: Variant): boolean =>
  Object.entries(fits).every(([feature, allowed]) => {
    const value = variant[feature] ?? unsaid[feature];
    return value === undefined || allowed.includes(value);
  });
