import type { Issue } from '@brinewright/words';
import type { Family } from '../model/family.ts';
import type { Feature, Fits } from '../model/feature.ts';
import type { Tell } from '../model/tell.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

/** Values that lead to other parts, tools or limits must be told apart by something. */
export const lookAlikeValues: LintRule = {
  code: 'lint.look-alike-values',
  check: (subject) => subject.family.features.flatMap((feature) => alikeIn(feature, subject)),
};

const alikeIn = (feature: Feature, subject: LintSubject): readonly Issue[] => {
  const { family } = subject;
  const ids = feature.values.map(({ id }) => id);
  return ids.flatMap((one, index) =>
    ids
      .slice(index + 1)
      .filter(
        (other) =>
          differ(family, feature.id, one, other) &&
          !family.tells.some((tell) => tellParts(tell, feature.id, one, other)),
      )
      .map((other) =>
        lintIssue(subject, 'warning', ['features', feature.id], {
          code: 'lint.look-alike-values',
          values: { one, other, feature: feature.id },
        }),
      ),
  );
};

const differ = (family: Family, feature: string, one: string, other: string): boolean => {
  const fits = [...family.parts, ...family.tools].map((entry) => entry.fits);
  const limit = (value: string): number | undefined => family.limits.temperature[value]?.si;
  return fits.some((entry) => splits(entry, feature, one, other)) || limit(one) !== limit(other);
};

const splits = (fits: Fits, feature: string, one: string, other: string): boolean => {
  const allowed = fits[feature];
  return allowed !== undefined && allowed.includes(one) !== allowed.includes(other);
};

const tellParts = (tell: Tell, feature: string, one: string, other: string): boolean => {
  if (tell.kind === 'seen') return tell.answers.some(({ allows }) => splits(allows, feature, one, other));
  return tell.feature === feature && tell.expected[one]?.si !== tell.expected[other]?.si;
};
