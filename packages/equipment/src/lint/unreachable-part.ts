import { fitsVariant } from '../model/feature.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** A part that fits no build cannot be ordered by anyone. */
export const unreachablePart: LintRule = {
  code: 'lint.unreachable-part',
  check: (subject) =>
    subject.family.parts
      .filter((part) => !subject.variants.some(({ variant }) => fitsVariant(part.fits, variant)))
      .map((part) =>
        lintIssue(subject, 'error', ['parts', part.id], {
          code: 'lint.unreachable-part',
          values: { part: part.id },
        }),
      ),
};
