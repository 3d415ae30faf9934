import { undescribed } from '../model/family.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** Feature that says whether hot water runs through the valve. */
const waterFeature = 'water';

/** Without it every unit is taken as one for cold water: nothing waits for it to cool. */
export const noWaterFeature: LintRule = {
  code: 'lint.no-water-feature',
  check: (subject) => {
    const { family } = subject;
    if (family.id === undescribed || family.features.some(({ id }) => id === waterFeature)) return [];
    return [lintIssue(subject, 'note', ['features'], { code: 'lint.no-water-feature' })];
  },
};
