import { type Family, fitsVariant, partCount, type Variant } from '@brinewright/equipment';
import { operationsFor } from './operations-for.ts';
import type { Target } from './recognition.ts';
import { rolesOf } from './roles.ts';

/** What is fitted sets the times only until its rate was measured. */
export const ratedFeatures = ['controller', 'drain', 'injector', 'meter', 'refill'] as const;

export type Measured = ReadonlySet<string>;

/**
 * What a variant means for today's work: part ids and counts for the targets, tools, fitted options that set
 * times, limits, conversions. Variants with equal signatures need not be told apart.
 *
 * `measured` names fitted features whose rates were measured on this unit: they beat any chart.
 */
export const signature = (
  variant: Variant,
  family: Family,
  targets: readonly Target[],
  measured: Measured = new Set(),
): string =>
  [
    ...partsOf(variant, family, targets),
    ...toolsOf(variant, family, targets),
    ...(targets.some(({ kind }) => kind === 'settings') ? fittedOf(variant, measured) : []),
    ...targets.flatMap((target) => (target.kind === 'convert' ? conversionOf(variant, family, target) : [])),
    ...(targets.some(({ kind }) => kind !== 'operation') ? limitsOf(variant, family) : []),
  ]
    .sort()
    .join(';');

const partsOf = (variant: Variant, family: Family, targets: readonly Target[]): readonly string[] => {
  const roles = rolesOf(targets);
  if (roles.length === 0) return [];
  const fitting = family.parts.filter((part) => fitsVariant(part.fits, variant));
  const asked = fitting.filter((part) => roles.includes(part.is));
  const kits = fitting.filter(({ holds }) => asked.some((part) => Object.hasOwn(holds, part.id)));
  const lines = [...asked, ...kits].map((part) => `part:${part.id}*${partCount(part, family)}`);
  return [...new Set(lines)];
};

const toolsOf = (variant: Variant, family: Family, targets: readonly Target[]): readonly string[] => {
  const named = new Set(operationsFor(family, variant, targets).flatMap(({ tools }) => tools));
  return [...named]
    .filter((id) => {
      const tool = family.tools.find((one) => one.id === id);
      return tool === undefined || fitsVariant(tool.fits, variant);
    })
    .map((id) => `tool:${id}`);
};

const fittedOf = (variant: Variant, measured: Measured): readonly string[] =>
  ratedFeatures
    .filter((feature) => variant[feature] !== undefined && !measured.has(feature))
    .map((feature) => `fitted:${feature}=${variant[feature]}`);

/** Parts rated for cold water fail in hot: the limit always counts where something is fitted or set. */
const limitsOf = (variant: Variant, { limits }: Family): readonly string[] => {
  const hottest = limits.temperature[variant.water ?? 'any'] ?? limits.temperature.any;
  return hottest === undefined ? [] : [`limit:${hottest.si}`];
};

type Convert = Extract<Target, { kind: 'convert' }>;

/** A conversion is a change of one feature: what the variant lacks for it, and the lines only the family knows. */
const conversionOf = (variant: Variant, family: Family, { feature, to }: Convert): readonly string[] => {
  const from = variant[feature];
  if (from === to) return [`convert:${feature}=${to}:as-it-is`];
  const known = family.conversions.find((c) => c.feature === feature && c.from === from && c.to === to);
  const converted = { ...variant, [feature]: to };
  const more = family.parts.filter(
    (part) => fitsVariant(part.fits, converted) && !fitsVariant(part.fits, variant),
  );
  return [
    `convert:${feature}=${from}>${to}:${known === undefined ? 'unknown' : known.also.join('+')}`,
    ...more.map((part) => `convert-part:${part.id}*${partCount(part, family)}`),
  ];
};
