import {
  type BoreHarm,
  type Family,
  type FittedBore,
  fitsVariant,
  type Variant,
  variantsOf,
} from '@brinewright/equipment';
import { type Sheet, valueName } from '@brinewright/papers';

/** A piston, or a rod without its sleeve, to fit and look at. */
export type PistonChoice = { readonly id: string; readonly name: string; readonly isFitted: boolean };

type Fitted = PistonChoice & { readonly harm: Pick<BoreHarm, 'piston' | 'sleeve'> };

/** The right piston, those of the other builds of this body, and the right one with its sleeve forgotten. */
export const pistonChoices = (
  sheet: Sheet,
  family: Family,
  bore: FittedBore,
  asked: string | undefined,
): readonly Fitted[] => {
  const all = [
    { id: 'right', name: sheet.word('app.cutaway.piston.right'), harm: {} },
    ...otherPistons(sheet, family, bore),
    ...withoutSleeve(sheet, family, bore),
  ];
  if (all.length === 1) return [];
  const fitted = all.find(({ id }) => id === asked)?.id ?? 'right';
  return all.map((one) => ({ ...one, isFitted: one.id === fitted }));
};

const otherPistons = (sheet: Sheet, family: Family, bore: FittedBore) => {
  const rows = family.bores.find(({ id }) => id === bore.id)?.rows ?? [];
  const own = rows.find(({ fits }) => fitsVariant(fits, bore.variant));
  return rows
    .filter((row) => row !== own)
    .flatMap((row) => {
      const other = nearest(family, bore.variant, (variant) => fitsVariant(row.fits, variant));
      return other === undefined ? [] : [{ piston: other, named: Object.keys(row.fits) }];
    })
    .map(({ piston, named }) => ({
      id: named.map((feature) => piston[feature] ?? '').join('-'),
      name: sheet.word('app.cutaway.piston.of', {
        build: named.map((feature) => valueName(sheet, feature, piston[feature] ?? '')).join(', '),
      }),
      harm: { piston },
    }));
};

/** The allowed build that differs in the fewest features: the same body with another piston. */
const nearest = (family: Family, own: Variant, fits: (variant: Variant) => boolean): Variant | undefined =>
  variantsOf(family)
    .map(({ variant }) => variant)
    .filter(fits)
    .map((variant) => ({ variant, apart: differing(own, variant) }))
    .toSorted((a, b) => a.apart - b.apart)[0]?.variant;

const differing = (a: Variant, b: Variant): number =>
  Object.entries(a).filter(([feature, value]) => b[feature] !== value).length;

/** Only a build that has a sleeve can be put together without it. */
const withoutSleeve = (sheet: Sheet, family: Family, bore: FittedBore) =>
  family.parts.some((part) => part.is === 'sleeve' && fitsVariant(part.fits, bore.variant))
    ? [{ id: 'no-sleeve', name: sheet.word('app.cutaway.no-sleeve'), harm: { sleeve: 0 } }]
    : [];
