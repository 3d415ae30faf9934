import { type Conversion, type Family, fitsVariant, type Part, type Variant } from '@brinewright/equipment';
import { type Issue, type Message, message } from '@brinewright/words';
import type { Target } from '../recognition/recognition.ts';
import { featureTitle, valueTitle } from '../recognition/titles.ts';
import type { Situation } from '../situation/situation.ts';
import type { Remaining } from './repair.ts';

type Convert = Extract<Target, { kind: 'convert' }>;

const isConvert = (target: Target): target is Convert => target.kind === 'convert';

/** What the valve will be once the conversions are done. */
export const converted = (variant: Variant, targets: readonly Target[]): Variant =>
  Object.fromEntries([
    ...Object.entries(variant),
    ...targets.filter(isConvert).map(({ feature, to }) => [feature, to] as const),
  ]);

export const isKit = (part: Part): boolean => Object.keys(part.holds).length > 0;

/** A conversion is the difference of parts, and what only the family knows about it. */
export const conversionParts = (
  family: Family,
  variant: Variant,
  targets: readonly Target[],
): readonly Part[] => {
  if (!targets.some(isConvert)) return [];
  const after = converted(variant, targets);
  const also = targets
    .filter(isConvert)
    .flatMap((target) => conversionOf(family, variant, target)?.also ?? []);
  return family.parts.filter(
    (part) =>
      !isKit(part) &&
      (also.includes(part.id) || (fitsVariant(part.fits, after) && !fitsVariant(part.fits, variant))),
  );
};

const conversionOf = (family: Family, variant: Variant, { feature, to }: Convert): Conversion | undefined =>
  family.conversions.find((one) => one.feature === feature && one.to === to && one.from === variant[feature]);

/** What to look at before converting, in the definition's words. */
export const conversionChecks = (
  family: Family,
  remaining: Remaining,
  targets: readonly Target[],
): readonly Message[] => {
  const checks = targets
    .filter(isConvert)
    .flatMap((target) =>
      remaining.flatMap(({ variant }) => conversionOf(family, variant, target)?.check ?? []),
    );
  return [...new Set(checks)].map((check) => message('repair.convert-check', { check }));
};

/** A conversion that no line of the definition allows from any build that remains. */
export const conversionRefusals = (
  family: Family,
  remaining: Remaining,
  targets: readonly Target[],
): readonly Message[] =>
  targets
    .filter(isConvert)
    .filter((target) => !remaining.some(({ variant }) => conversionOf(family, variant, target) !== undefined))
    .map(({ feature, to }) =>
      message('repair.no-conversion', {
        feature: featureTitle(family, feature),
        to: valueTitle(family, feature, to),
      }),
    );

/** 'feature:value', spaces allowed; what the family does not have is said, never guessed. */
export const readConversion = (family: Family, written: string): Convert | undefined => {
  const [feature, to, ...more] = written.split(':').map((piece) => piece.trim());
  if (feature === undefined || to === undefined || more.length > 0) return undefined;
  const known = family.features.find(({ id }) => id === feature)?.values.some(({ id }) => id === to);
  return known === true ? { kind: 'convert', feature, to } : undefined;
};

export const unreadConversions = (s: Situation): readonly Issue[] =>
  (s.visit.decided ?? []).flatMap(({ what, value }, place): Issue[] => {
    if (what !== 'convert' || readConversion(s.family, value) !== undefined) return [];
    return [
      {
        code: 'unknown-conversion',
        severity: 'warning',
        at: ['decided', place, 'value'],
        message: message('repair.unknown-conversion', { written: value }),
        mend: message('repair.unknown-conversion-mend', {
          known: s.family.conversions.map(({ feature, to }) => `${feature}:${to}`).join(', '),
        }),
      },
    ];
  });
