import { type Family, type Fits, fitsVariant } from '@brinewright/equipment';
import { type MessageValue, message, type Text } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import { converted } from './convert.ts';
import type { Remaining, RepairPlan } from './repair.ts';
import { fitsTitled } from './titles.ts';

type Wrong = RepairPlan['wrong'][number];

/** Kit and tools in the hand against the valve, not against the paper. */
export const wrongInTheHand = (
  family: Family,
  remaining: Remaining,
  targets: readonly Target[],
  hand: { readonly kit: readonly string[]; readonly tools: readonly string[] },
): readonly Wrong[] => [
  ...hand.kit.flatMap((id) =>
    judge(
      family,
      'part',
      id,
      family.parts.find((part) => part.id === id),
      remaining,
      targets,
    ),
  ),
  ...hand.tools.flatMap((id) =>
    judge(
      family,
      'tool',
      id,
      family.tools.find((tool) => tool.id === id),
      remaining,
      targets,
    ),
  ),
];

/** Odds below which a build is not reckoned with. */
const doubtful = 0.05;

/** Wrong when it fits none of what the valve may be, or will be once converted; a doubt is left to the next tell. */
const judge = (
  family: Family,
  is: Wrong['is'],
  id: string,
  found: { readonly fits: Fits; readonly title: Text } | undefined,
  remaining: Remaining,
  targets: readonly Target[],
): readonly Wrong[] => {
  if (found === undefined) return [{ id, is, says: message('repair.not-in-definition', { id }) }];
  const fits = remaining
    .filter(
      ({ variant }) =>
        fitsVariant(found.fits, variant) || fitsVariant(found.fits, converted(variant, targets)),
    )
    .reduce((sum, { p }) => sum + p, 0);
  if (fits > doubtful) return [];
  return [
    {
      id,
      is,
      says: message(is === 'part' ? 'repair.wrong-part' : 'repair.wrong-tool', {
        title: found.title,
        ...against(family, found.fits, remaining),
      }),
    },
  ];
};

/** What it was made for against what the valve is, in the features that part them; in all where only together. */
const against = (
  family: Family,
  fits: Fits,
  remaining: Remaining,
): Readonly<Record<'fits' | 'valve', MessageValue>> => {
  const valve = likelyValues(remaining, Object.keys(fits));
  const parting = Object.keys(fits).filter(
    (id) => !(fits[id] ?? []).some((value) => valve[id]?.includes(value)),
  );
  const shown = parting.length > 0 ? parting : Object.keys(fits);
  const only = (all: Fits): Fits => Object.fromEntries(shown.map((id) => [id, all[id] ?? []]));
  return { fits: fitsTitled(family, only(fits)), valve: fitsTitled(family, only(valve)) };
};

/** What the valve may be in the features that matter here, without what is too unlikely to say. */
const likelyValues = (remaining: Remaining, features: readonly string[]): Fits =>
  Object.fromEntries(features.map((feature) => [feature, likely(remaining, feature)]));

const likely = (remaining: Remaining, feature: string): readonly string[] => {
  const odds = new Map<string, number>();
  for (const { variant, p } of remaining) {
    const value = variant[feature];
    if (value !== undefined) odds.set(value, (odds.get(value) ?? 0) + p);
  }
  const kept = [...odds].filter(([, p]) => p > doubtful).map(([value]) => value);
  return (kept.length > 0 ? kept : [...odds.keys()]).toSorted();
};
