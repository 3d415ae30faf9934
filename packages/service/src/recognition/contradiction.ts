import type { Conversion, Family, Tell, Variant } from '@brinewright/equipment';
import { byThenId } from '../stage/rank.ts';
import { at } from './bayes.ts';
import type { Evidence } from './evidence.ts';
import type { Access, Belief, Contradiction } from './recognition.ts';
import { variantSpace } from './variant-space.ts';

/** Answers disagree when even the variant they suit best needs errors as unlikely as this; ours. */
const tooUnlikely = 0.15;

/**
 * Whether the answers disagree, and the fewest to doubt. For each variant the answers it denies would have to be
 * wrong; taking the most trusted of them away first leaves a believable rest soonest, so the least count over all
 * variants is the smallest set of answers whose removal resolves it. Ties go to the likelier variant.
 */
export const contradiction = (
  family: Family,
  belief: Belief,
  evidence: readonly Evidence[],
  access: Access,
): Contradiction | undefined => {
  const { variants } = variantSpace(family);
  const doubts = variants.map((_, v) => toDoubt(evidence, v));
  const fewest = Math.min(...doubts.map((doubt) => doubt.length));
  if (fewest === 0 || !Number.isFinite(fewest)) return undefined;
  const best = byThenId(
    (v: number) => at(belief.odds, v),
    (v) => String(v).padStart(9, '0'),
  );
  const [first] = [...variants.keys()].filter((v) => doubts[v]?.length === fewest).sort(best);
  return {
    doubt: (doubts[first ?? 0] ?? []).map(({ is }) => is),
    conversions: conversionsThatExplain(family, evidence, access),
  };
};

/** Answers that must be doubted for this variant to be believed. */
const toDoubt = (evidence: readonly Evidence[], v: number): readonly Evidence[] => {
  const denied = evidence.filter((one) => at(one.denied, v) === 1).sort((a, b) => a.wrong - b.wrong);
  const keepFrom = denied.findIndex((_, place) => chance(denied.slice(place)) >= tooUnlikely);
  return denied.slice(0, keepFrom < 0 ? denied.length : keepFrom);
};

const chance = (wrong: readonly Evidence[]): number => wrong.reduce((p, one) => p * one.wrong, 1);

/** Conversions after which some answers speak of the valve as made and the others of the valve as it is now. */
const conversionsThatExplain = (family: Family, evidence: readonly Evidence[], access: Access) =>
  family.conversions
    .filter((conversion) => explains(family, evidence, conversion, access))
    .map(({ feature, from, to }) => ({ feature, from, to }));

const explains = (
  family: Family,
  evidence: readonly Evidence[],
  conversion: Conversion,
  access: Access,
): boolean => {
  const { variants } = variantSpace(family);
  return variants.some((made, v) => {
    if (made[conversion.feature] !== conversion.from) return false;
    const now = variants.findIndex((other) => isConverted(family, made, other, conversion));
    return now >= 0 && splitsInto(family, evidence, v, now, access);
  });
};

const isConverted = (family: Family, made: Variant, now: Variant, { feature, to }: Conversion): boolean =>
  family.features.every(({ id }) => now[id] === (id === feature ? to : made[id]));

/** Every answer suits the valve as made or as it is now, and what speaks of the change lies no farther out. */
const splitsInto = (
  family: Family,
  evidence: readonly Evidence[],
  made: number,
  now: number,
  access: Access,
): boolean => {
  const neither = evidence.filter((one) => at(one.denied, made) === 1 && at(one.denied, now) === 1);
  const old = evidence.filter((one) => at(one.denied, made) === 0 && at(one.denied, now) === 1);
  const fresh = evidence.filter((one) => at(one.denied, made) === 1 && at(one.denied, now) === 0);
  if (old.length === 0 || fresh.length === 0 || chance(neither) < tooUnlikely) return false;
  const depth = (one: Evidence) => depthOf(family.tells, one, access);
  return Math.min(...old.map(depth)) <= Math.max(...fresh.map(depth));
};

/** How much must come off to see it; papers lie outermost. */
const depthOf = (tells: readonly Tell[], { is }: Evidence, access: Access): number =>
  is.from === 'told' ? 0 : access(tells.find(({ id }) => id === is.tell)?.after ?? []);
