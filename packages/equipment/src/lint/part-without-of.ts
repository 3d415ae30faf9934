import { listed, short } from '../issue/report.ts';
import type { Family } from '../model/family.ts';
import type { Part } from '../model/part.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

type Fitting = { readonly role: string; readonly feature: string; readonly ids: readonly string[] };

/** Where a family has several fittings, a part says which one it is, or the bill lists all of them. */
export const partWithoutOf: LintRule = {
  code: 'lint.part-without-of',
  check: (subject) =>
    fittingsIn(subject.family).flatMap((fitting) => {
      const bare = bareParts(subject.family, fitting);
      const [first] = bare;
      if (first === undefined) return [];
      const { role, ids } = fitting;
      return [
        lintIssue(subject, 'note', ['parts', first], {
          code: 'lint.part-without-of',
          values: { role, ...short('parts', bare), count: ids.length, known: listed(ids) },
        }),
      ];
    }),
};

const idsOf = (entries: readonly { readonly id: string }[]): readonly string[] => entries.map(({ id }) => id);

const fittingsIn = ({ controls, controllers, meters }: Family): readonly Fitting[] => {
  const all: readonly Fitting[] = [
    { role: 'refill-control', feature: 'refill', ids: idsOf(controls.refill) },
    { role: 'drain-control', feature: 'drain', ids: idsOf(controls.drain) },
    { role: 'controller', feature: 'controller', ids: idsOf(controllers) },
    { role: 'meter', feature: 'meter', ids: idsOf(meters) },
  ];
  return all.filter(({ ids }) => ids.length > 1);
};

/** A part that fits by the feature of the same name is tied already. */
const bareParts = ({ parts }: Family, { role, feature }: Fitting): readonly string[] =>
  idsOf(
    parts.filter(
      (part: Part) => part.is === role && part.of === undefined && part.fits[feature] === undefined,
    ),
  );
