import { short } from '../issue/report.ts';
import type { Family } from '../model/family.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** A repair that replaces something needs a part of that role to order; each role is asked for once. */
export const roleWithoutPart: LintRule = {
  code: 'lint.role-without-part',
  check: (subject) => {
    const { family } = subject;
    if (family.parts.length === 0) return [];
    return [...bareRoles(family)].map(([role, faults]) =>
      lintIssue(subject, 'warning', ['parts'], {
        code: 'lint.role-without-part',
        values: { role, ...short('faults', faults) },
      }),
    );
  },
};

/** Roles that no part has, each with the faults of these kinds that are mended with it. */
const bareRoles = ({ faults, kinds, parts }: Family): ReadonlyMap<string, readonly string[]> => {
  const roles = new Set(parts.map((part) => part.is));
  const bare = new Map<string, string[]>();
  for (const fault of faults.filter((one) => one.kinds.some((kind) => kinds.includes(kind)))) {
    for (const role of new Set(fault.repair.replace)) {
      if (!roles.has(role)) bare.set(role, [...(bare.get(role) ?? []), fault.id]);
    }
  }
  return bare;
};
