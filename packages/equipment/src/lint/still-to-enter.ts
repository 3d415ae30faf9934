import { type Family, undescribed } from '../model/family.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** What a manual or a tape would still give; of a unit that nobody has described there is nothing to enter. */
export const stillToEnter: LintRule = {
  code: 'lint.still-to-enter',
  check: (subject) => {
    const missing = subject.family.id === undescribed ? [] : missingFrom(subject.family);
    if (missing.length === 0) return [];
    const what = missing.join(',\u0020');
    return [lintIssue(subject, 'note', [], { code: 'lint.still-to-enter', values: { what } })];
  },
};

const missingFrom = (family: Family): readonly string[] => {
  const softens = family.kinds.includes('softener');
  const wanted: readonly (readonly [string, boolean])[] = [
    ['limits.pressure', family.limits.pressure === undefined],
    ['limits.temperature', Object.keys(family.limits.temperature).length === 0],
    ['tells', family.tells.length === 0 && family.features.length > 0],
    ['bore', family.bores.length === 0],
    ['injectors', softens && family.injectors.length === 0],
    ...family.injectors.map(
      ({ id, nozzle, at }) => [`injectors.${id}`, nozzle === undefined && at.length === 0] as const,
    ),
    ['controls.drain', family.controls.drain.length === 0],
    ['controls.refill', softens && family.controls.refill.length === 0],
    ['controllers', family.controllers.length === 0],
    ['parts', family.parts.length === 0],
    ...family.parts.map(({ id, number }) => [`parts.${id}.number`, number === undefined] as const),
  ];
  return wanted.flatMap(([name, missing]) => (missing ? [name] : []));
};
