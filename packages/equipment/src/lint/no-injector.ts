import { message } from '@brinewright/words';
import { nearest } from '../issue/near.ts';
import type { Variant } from '../model/feature.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

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
    return [...new Set(bare)].map((injector) => {
      const near = nearest(injector, unused(known, variants));
      return lintIssue(subject, 'error', ['features', injectorFeature], {
        code: 'lint.no-injector',
        values: { variant: `${injectorFeature}:${injector}` },
        ...(near === undefined ? {} : { mend: message('issue.did-you-mean', { near }) }),
      });
    });
  },
};

/** Injectors that no build has: one of them may have been meant. */
const unused = (known: ReadonlySet<string>, variants: LintSubject['variants']): readonly string[] =>
  [...known].filter((id) => !variants.some(({ variant }) => variant[injectorFeature] === id));

const isFilter = (variant: Variant): boolean => variant.build === 'filter';
