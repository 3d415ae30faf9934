import type { Issue } from '@brinewright/words';
import { boreOf, type FittedBore } from '../bore/bore-of.ts';
import { listed } from '../issue/report.ts';
import { type BoreDefinition, type Stop, stops } from '../model/bore.ts';
import { fitsVariant } from '../model/feature.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

/** What the seals of each bore can do, a build for each line of joins. */
const eachRow = (
  subject: LintSubject,
  look: (fitted: FittedBore, bore: BoreDefinition, row: number) => readonly Issue[],
): readonly Issue[] =>
  subject.family.bores.flatMap((bore) =>
    bore.rows.flatMap((row, index) => {
      const build = subject.variants.find(
        ({ variant }) => bore.rows.find((one) => fitsVariant(one.fits, variant)) === row,
      );
      const fitted = build === undefined ? undefined : boreOf(subject.family, build.variant, bore.id);
      return fitted === undefined ? [] : look(fitted, bore, index);
    }),
  );

/** Joins that ports in this order cannot make. */
export const joinsOpen: LintRule = {
  code: 'lint.joins-open',
  check: (subject) =>
    eachRow(subject, (fitted, bore, row) =>
      [...new Set(fitted.joined.problems.map(({ stop }) => stop))].map((stop) =>
        lintIssue(subject, 'error', ['bores', bore.id, 'joins', row, stop], {
          code: 'lint.joins-open',
          values: { stop },
        }),
      ),
    ),
};

/** Where a port stands twice and more than one set of seals would do: whether `open` says which one it is. */
export const openSettled: LintRule = {
  code: 'lint.open-settled',
  check: (subject) =>
    eachRow(subject, (fitted, bore, row) =>
      fitted.joined.stops
        .filter(({ choices }) => choices.length > 1)
        .map((stop) => settledOrLeft(subject, stop, bore, row)),
    ),
};

type JoinedStop = FittedBore['joined']['stops'][number];

const settledOrLeft = (
  subject: LintSubject,
  { stop, open, choices, settled }: JoinedStop,
  bore: BoreDefinition,
  row: number,
): Issue => {
  const at = ['bores', bore.id, 'joins', row] as const;
  const values = { stop, seals: listed(open.map(String)) };
  if (settled === 'given')
    return lintIssue(subject, 'note', [...at, 'open', stop], { code: 'lint.open-settled', values });
  return lintIssue(subject, 'note', [...at, stop], {
    code: 'lint.open-left',
    values: { ...values, choices: listed(choices.map((one) => one.join('+'))) },
  });
};

/** Measured lengths must give the joins that are written. */
export const lengthsDiffer: LintRule = {
  code: 'lint.lengths-differ',
  check: (subject) =>
    eachRow(subject, (fitted, bore) => {
      const at = ['bores', bore.id, 'measured'];
      if (fitted.lengthProblems.length > 0) {
        return [lintIssue(subject, 'error', at, { code: 'lint.lengths-impossible' })];
      }
      if (bore.measured === undefined || fitted.lengths.schematic) return [];
      return stops
        .filter((stop) => isDifferent(fitted, stop))
        .map((stop) =>
          lintIssue(subject, 'error', [...at, 'stops', stop], {
            code: 'lint.lengths-differ',
            values: { stop },
          }),
        );
    }),
};

const isDifferent = (fitted: FittedBore, stop: Stop): boolean => {
  const written = fitted.joins(stop);
  const made = fitted.joins(stop, { piston: fitted.variant });
  return written.length > 0 && JSON.stringify(written) !== JSON.stringify(made);
};
