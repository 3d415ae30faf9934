import { fitsVariant } from '../model/feature.ts';
import type { Tell } from '../model/tell.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

/** A tell whose answers all allow the same builds says nothing. */
export const muteTell: LintRule = {
  code: 'lint.mute-tell',
  check: (subject) =>
    subject.family.tells
      .filter((tell) => isMute(tell, subject))
      .map((tell) =>
        lintIssue(subject, 'error', ['tells', tell.id], {
          code: 'lint.mute-tell',
          values: { tell: tell.id },
        }),
      ),
};

const isMute = (tell: Tell, { variants }: LintSubject): boolean => {
  if (tell.kind === 'measured') return new Set(Object.values(tell.expected).map(({ si }) => si)).size < 2;
  const allowed = tell.answers.map((answer) =>
    variants.map(({ variant }) => (fitsVariant(answer.allows, variant) ? '1' : '0')).join(''),
  );
  return new Set(allowed).size < 2;
};
