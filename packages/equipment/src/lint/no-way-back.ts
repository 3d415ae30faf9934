import { type LintRule, lintIssue } from './lint-rule.ts';

/** What comes out must go back in: reassembly is derived from it. */
export const noWayBack: LintRule = {
  code: 'lint.no-way-back',
  check: (subject) =>
    subject.family.operations
      .filter((one) => one.takesOut.length > 0 && one.back === undefined)
      .map(({ id }) =>
        lintIssue(subject, 'error', ['operations', id], {
          code: 'lint.no-way-back',
          values: { operation: id },
        }),
      ),
};
