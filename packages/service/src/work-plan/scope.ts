import { type Family, type Fits, fitsVariant, type Operation, type Variant } from '@brinewright/equipment';
import type { Belief, Recognition, Target } from '../recognition/recognition.ts';
import { variantSpace } from '../recognition/variant-space.ts';
import { converted } from '../repair/convert.ts';
import type { Situation } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';
import { byText } from './operation-kinds.ts';

/** An operation is planned when the variants it fits have more than this chance together. */
const worthPlanning = 0.02;
/** A special tool is asked for and a part looked for above this chance; below it the feature counts as settled. */
const worthBringing = 0.05;

/** Features that matter to the work even where no operation names them: hot units cool first. */
const alwaysTold = [stockIds.features.water, stockIds.features.build];

/** What may be under the cover: classes of variants that operations and tools treat alike, and what fits them. */
export type Scope = {
  readonly family: Family;
  readonly classes: readonly VariantClass[];
  /** Operations that fit any class. */
  readonly operations: ReadonlyMap<string, Operation>;
  readonly fitsAll: (fits: Fits) => boolean;
  readonly tools: (operation: Operation) => readonly string[];
  /** A stock names pieces that not every family or variant has; without any part list all of them may be there. */
  readonly hasRole: (role: string) => boolean;
};

export type VariantClass = { readonly variant: Variant; readonly p: number };

/** Works from what was recognised; without it every variant is as likely as its definition says. */
export const scopeOf = (
  s: Situation,
  recognition: Recognition | undefined,
  targets: readonly Target[],
): Scope => {
  const { family } = s;
  const belief = recognition?.belief ?? variantSpace(family).weights([]);
  const classes = covering(withConversions(ofKind(s, classesOf(family, belief)), targets));
  const chance = (fits: Fits): number => total(classes.filter(({ variant }) => fitsVariant(fits, variant)));
  const fitTools = new Set(family.tools.filter(({ fits }) => chance(fits) > worthBringing).map(idOf));
  const known = new Set(family.tools.map(idOf));
  return {
    family,
    classes,
    operations: new Map(
      family.operations
        .filter(({ fits }) => chance(fits) > worthPlanning)
        .map((operation) => [operation.id, operation]),
    ),
    fitsAll: (fits) => classes.every(({ variant }) => fitsVariant(fits, variant)),
    hasRole: roleIn(s, belief, targets),
    tools: (operation) => operation.tools.filter((tool) => fitTools.has(tool) || !known.has(tool)),
  };
};

/** A role is there unless the parts that have it fit only what is settled not to be, now or once converted. */
const roleIn = (s: Situation, belief: Belief, targets: readonly Target[]): Scope['hasRole'] => {
  const { parts } = s.family;
  const space = variantSpace(s.family);
  const known = new Map<string, boolean>();
  const isThere = (role: string): boolean => {
    const own = parts.filter(({ is }) => is === role);
    const chance = space.marginal(belief, (variant) => {
      if ((variant.build ?? s.kind) !== s.kind) return '';
      const may = [variant, converted(variant, targets)];
      return own.some(({ fits }) => may.some((one) => fitsVariant(fits, one))) ? role : '';
    });
    return (chance.get(role) ?? 0) > worthBringing;
  };
  return (role) => {
    const is = known.get(role) ?? (parts.length === 0 || isThere(role));
    known.set(role, is);
    return is;
  };
};

const idOf = ({ id }: { readonly id: string }): string => id;

const total = (classes: readonly VariantClass[]): number => classes.reduce((sum, { p }) => sum + p, 0);

/** Odds over the features that operations and tools name; the rest makes no difference to the work. */
const classesOf = (family: Family, belief: Belief): readonly VariantClass[] => {
  const named = new Set<string>([
    ...alwaysTold,
    ...[...family.operations, ...family.tools].flatMap(({ fits }) => Object.keys(fits)),
  ]);
  const features = family.features.map(idOf).filter((id) => named.has(id));
  const space = variantSpace(family);
  const byKey = new Map<string, Variant>();
  const odds = space.marginal(belief, (variant) => {
    const key = features.map((feature) => variant[feature] ?? '').join('|');
    if (!byKey.has(key)) byKey.set(key, Object.fromEntries(features.map((f) => [f, variant[f] ?? ''])));
    return key;
  });
  return [...odds]
    .sort(([a, p], [b, q]) => q - p || byText(a, b))
    .map(([key, p]) => ({ variant: byKey.get(key) ?? {}, p }));
};

/** The visit says whether it is a softener or a filter; a family without the feature is what the visit says. */
const ofKind = (s: Situation, classes: readonly VariantClass[]): readonly VariantClass[] => {
  const same = classes.filter(({ variant }) => (variant.build ?? s.kind) === s.kind);
  const left = same.length > 0 ? same : classes;
  const sum = total(left);
  return left.map(({ variant, p }) => ({ variant: { build: s.kind, ...variant }, p: p / sum }));
};

/** After a conversion the operations of the other value are met too. */
const withConversions = (
  classes: readonly VariantClass[],
  targets: readonly Target[],
): readonly VariantClass[] =>
  targets.reduce(
    (all, target) =>
      target.kind === 'convert'
        ? all.flatMap((one) => {
            const from = one.variant[target.feature];
            if (from === undefined || from === target.to) return [one];
            return [one, { variant: { ...one.variant, [target.feature]: target.to }, p: one.p }];
          })
        : all,
    classes,
  );

/** The likeliest classes until less than the chance worth planning for is left. */
const covering = (classes: readonly VariantClass[]): readonly VariantClass[] => {
  const enough = total(classes) - worthPlanning;
  let sum = 0;
  return classes.filter(({ p }) => {
    const takes = sum < enough;
    sum += p;
    return takes;
  });
};
