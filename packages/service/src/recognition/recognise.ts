import type { Family } from '@brinewright/equipment';
import { type Message, message } from '@brinewright/words';
import type { Situation } from '../situation/situation.ts';
import { byThenId } from '../stage/rank.ts';
import { blocked, done, type Gap, type Stage } from '../stage/stage.ts';
import { at } from './bayes.ts';
import { contradiction } from './contradiction.ts';
import { type DecisionGroups, decisionGroups, fitsOf, measuredRates } from './decision-groups.ts';
import type { Heard } from './evidence.ts';
import { hear } from './hear.ts';
import { nextTells } from './next-tells.ts';
import { groupOdds } from './prospect.ts';
import type { Access, Belief, Recognition, Target } from './recognition.ts';
import { variantSpace, worthReckoning } from './variant-space.ts';
import { whyRecognised } from './why.ts';

/** Odds this high settle a feature, and decide between groups of variants. */
const settledAt = 0.95;

/** As many variants as a screen shows. */
const shownVariants = 8;

/** Odds over the variants after everything heard, before any target is known. */
export const believe = (s: Situation): Heard & { readonly belief: Belief } => {
  const heard = hear(s);
  return { ...heard, belief: variantSpace(s.family).weights(heard.evidence.map((one) => one.likelihood)) };
};

/**
 * Which variants remain, whether they need telling apart for the targets, and the tell worth most per minute.
 * Blocked only when the definition's constraints leave no variant at all.
 */
export const recognise = (s: Situation, targets: readonly Target[], access: Access): Stage<Recognition> => {
  if (variantSpace(s.family).variants.length === 0) return blocked([noVariant(s.family)]);
  const { belief, evidence, issues } = believe(s);
  const groups = decisionGroups(s.family, targets, measuredRates(s));
  const answered = new Set(s.answers.map(({ tell }) => tell));
  const disagree = contradiction(s.family, belief, evidence, access);
  const found: Omit<Recognition, 'why'> = {
    ...whatRemains(s, belief, groups),
    next: nextTells(s.family, belief, groups, answered, access),
    ...(disagree === undefined ? {} : { contradiction: disagree }),
  };
  const value = { ...found, why: whyRecognised(s, targets, found) };
  return done(value, { gaps: gapsOf(value), issues });
};

const whatRemains = (s: Situation, belief: Belief, groups: DecisionGroups) => {
  const space = variantSpace(s.family);
  const named = groupsOf(s.family, belief, groups);
  const single = !s.described || space.variants.length === 1;
  return {
    single,
    belief,
    remaining: space.count(belief),
    top: space.top(belief, shownVariants),
    features: featuresOf(s.family, belief),
    groups: named,
    decided: single || (named[0]?.p ?? 0) >= settledAt,
  };
};

const featuresOf = (family: Family, belief: Belief): Recognition['features'] =>
  family.features.map(({ id, values }) => {
    const odds = variantSpace(family).marginal(belief, (variant) => variant[id] ?? '');
    const each = values.map((value) => ({ value: value.id, p: odds.get(value.id) ?? 0 }));
    const settled = each.find(({ p }) => p >= settledAt);
    return { feature: id, odds: each, ...(settled === undefined ? {} : { settled: settled.value }) };
  });

/** Groups that still have a variant in them, or are likely all the same, the likeliest first. */
const groupsOf = (family: Family, belief: Belief, groups: DecisionGroups): Recognition['groups'] => {
  const space = variantSpace(family);
  const odds = groupOdds(belief.odds, groups);
  const remaining = space.remaining(belief);
  const membersOf = (g: number): readonly number[] => {
    const left = remaining.filter((v) => at(groups.of, v) === g);
    return left.length === 0 && at(odds, g) >= worthReckoning ? likeliestOf(belief, groups, g) : left;
  };
  return groups.keys
    .map((signature, g) => ({ signature, p: at(odds, g), members: membersOf(g) }))
    .filter(({ members }) => members.length > 0)
    .map(({ signature, p, members }) => ({
      signature,
      p,
      fits: fitsOf(
        family,
        members.map((v) => space.variants[v] ?? {}),
      ),
    }))
    .sort(
      byThenId(
        ({ p }) => p,
        ({ signature }) => signature,
      ),
    );
};

/** Variants of a group of which each alone is unlikely: those that hold a twentieth of it or more. */
const likeliestOf = ({ odds }: Belief, groups: DecisionGroups, g: number): readonly number[] => {
  const own = [...groups.of.keys()].filter((v) => at(groups.of, v) === g);
  const share = worthReckoning * own.reduce((total, v) => total + at(odds, v), 0);
  return own.filter((v) => at(odds, v) >= share);
};

const noVariant = (family: Family): Gap => ({
  needs: ['families', family.id, 'never'],
  message: message('recognition.gap.no-variant', { family: family.title }),
  settles: ['recognition', 'repair', 'plan'],
});

/** What would settle it: the best tell, where one is worth asking. */
const gapsOf = ({ decided, next }: Recognition): readonly Gap[] => {
  const ask: Message | undefined =
    next[0] === undefined ? undefined : message('recognition.gap.tell', { tell: next[0].tell.ask });
  if (decided || ask === undefined) return [];
  return [
    { needs: ['answers', next[0]?.tell.id ?? ''], message: ask, settles: ['recognition', 'repair', 'plan'] },
  ];
};
