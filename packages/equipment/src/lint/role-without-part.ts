import { type LintRule, lintIssue } from './lint-rule.ts';

/** A repair that replaces something needs a part of that role to order. */
export const roleWithoutPart: LintRule = {
  code: 'lint.role-without-part',
  check: (subject) => {
    const { faults, parts } = subject.family;
    const roles = new Set(parts.map((part) => part.is));
    if (roles.size === 0) return [];
    return faults.flatMap((fault) =>
      fault.repair.replace
        .filter((role) => !roles.has(role))
        .map((role) =>
          lintIssue(subject, 'warning', ['parts'], {
            code: 'lint.role-without-part',
            values: { fault: fault.id, role },
          }),
        ),
    );
  },
};
