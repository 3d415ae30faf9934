import { type Family, type Fits, fitsVariant, type Variant } from '@brinewright/equipment';
import { message } from '@brinewright/words';
import type { RepairPlan } from './repair.ts';

export type Remaining = readonly { readonly variant: Variant; readonly p: number }[];

type Wrong = RepairPlan['wrong'][number];

/** Kit and tools in the hand against the valve, not against the paper. */
export const wrongInTheHand = (
  family: Family,
  remaining: Remaining,
  hand: { readonly kit: readonly string[]; readonly tools: readonly string[] },
): readonly Wrong[] => [
  ...hand.kit.flatMap((id) =>
    judge(
      'part',
      id,
      family.parts.find((part) => part.id === id),
      remaining,
    ),
  ),
  ...hand.tools.flatMap((id) =>
    judge(
      'tool',
      id,
      family.tools.find((tool) => tool.id === id),
      remaining,
    ),
  ),
];

/** Wrong when it fits none of what the valve may be; a doubt is left to the next tell. */
const judge = (
  is: Wrong['is'],
  id: string,
  found:
    | {
        readonly fits: Fits;
        readonly title: Wrong['id'] | { readonly en: string; readonly es?: string | undefined };
      }
    | undefined,
  remaining: Remaining,
): readonly Wrong[] => {
  if (found === undefined) return [{ id, is, says: message('repair.not-in-definition', { id }) }];
  const fits = remaining
    .filter(({ variant }) => fitsVariant(found.fits, variant))
    .reduce((sum, { p }) => sum + p, 0);
  if (fits > 0.05) return [];
  return [
    {
      id,
      is,
      says: message(is === 'part' ? 'repair.wrong-part' : 'repair.wrong-tool', {
        title: found.title,
        fits: describe(found.fits),
        valve: describe(common(remaining, Object.keys(found.fits))),
      }),
    },
  ];
};

/** What the remaining variants agree on, of the features that matter here. */
const common = (remaining: Remaining, features: readonly string[]): Fits =>
  Object.fromEntries(
    features.map((feature) => [
      feature,
      [...new Set(remaining.flatMap(({ variant }) => variant[feature] ?? []))].toSorted(),
    ]),
  );

const describe = (fits: Fits): string =>
  Object.entries(fits)
    .map(([feature, values]) => `${feature}: ${values.join('/')}`)
    .join(', ');
