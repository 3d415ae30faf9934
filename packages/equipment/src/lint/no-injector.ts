import type { Variant } from '../model/feature.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** Feature whose values are the ids of injectors. */
const injectorFeature = 'injector';

/** Every build that softens draws brine through an injector. */
export const noInjector: LintRule = {
  code: 'lint.no-injector',
  check: (subject) => {
    const { family, variants } = subject;
    if (family.injectors.length === 0) return [];
    const known = new Set(family.injectors.map(({ id }) => id));
    const bare = variants.flatMap(({ variant }) => {
      const injector = variant[injectorFeature];
      return injector === undefined || known.has(injector) || isFilter(variant) ? [] : [injector];
    });
    return [...new Set(bare)].map((injector) =>
      lintIssue(subject, 'error', ['features', injectorFeature], {
        code: 'lint.no-injector',
        values: { variant: `${injectorFeature}:${injector}` },
      }),
    );
  },
};

const isFilter = (variant: Variant): boolean => variant.build === 'filter';
