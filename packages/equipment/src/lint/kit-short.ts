import type { Issue } from '@brinewright/words';
import { partCount, stackCounts } from '../bore/stack-counts.ts';
import { fitsVariant, type Variant } from '../model/feature.ts';
import type { Part } from '../model/part.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

const stackRoles = ['seal', 'spacer', 'ring', 'plug'] as const;
type StackRole = (typeof stackRoles)[number];

/** A kit that holds pieces of the stack holds all of them, for every build it fits. */
export const kitShort: LintRule = {
  code: 'lint.kit-short',
  check: (subject) =>
    subject.family.parts
      .filter((part) => Object.keys(part.holds).length > 0)
      .flatMap((kit) => stackRoles.flatMap((role) => shortOf(kit, role, subject).slice(0, 1))),
};

/** One issue is enough for a kit and role: the first build that comes short. */
const shortOf = (kit: Part, role: StackRole, subject: LintSubject): readonly Issue[] => {
  const { family, variants } = subject;
  const held = family.parts.filter((part) => part.is === role && kit.holds[part.id] !== undefined);
  if (held.length === 0) return [];
  return variants
    .filter(({ variant }) => fitsVariant(kit.fits, variant) && stackCounts(family)[role] > 0)
    .flatMap(({ variant }) => shortFor(kit, role, held, variant, subject));
};

const shortFor = (
  kit: Part,
  role: StackRole,
  held: readonly Part[],
  variant: Variant,
  subject: LintSubject,
): readonly Issue[] => {
  const fitting = held.filter((part) => fitsVariant(part.fits, variant));
  const values = { variant: nameOf(kit, variant), kit: kit.id, role };
  if (fitting.length === 0) {
    return [lintIssue(subject, 'error', ['parts', kit.id, 'holds'], { code: 'lint.kit-lacks', values })];
  }
  return fitting.flatMap((part) => {
    const needed = partCount(part, subject.family);
    const amount = kit.holds[part.id];
    if (amount === undefined || amount === 'all' || amount >= needed) return [];
    const finding = {
      code: 'lint.kit-short',
      values: { ...values, held: amount, needed, part: part.id },
    } as const;
    return [lintIssue(subject, 'error', ['parts', kit.id, 'holds', part.id], finding)];
  });
};

/** The build by the features that the kit speaks of; by all where it speaks of none. */
const nameOf = (kit: Part, variant: Variant): string => {
  const spoken = Object.keys(kit.fits).flatMap((feature) => variant[feature] ?? []);
  return (spoken.length > 0 ? spoken : Object.values(variant)).join('+') || kit.id;
};
