import type { Operation } from '../model/operation.ts';
import { type LintRule, lintIssue } from './lint-rule.ts';

/** Operations that wait for one another can never be done. */
export const precedenceLoop: LintRule = {
  code: 'lint.precedence-loop',
  check: (subject) => {
    const stuck = stuckOperations(subject.family.operations);
    const loop = loopAmong(stuck);
    const [first] = loop;
    if (first === undefined) return [];
    const values = { loop: [...loop, first].join('\u0020→\u0020') };
    return [
      lintIssue(subject, 'error', ['operations', first, 'after'], { code: 'lint.precedence-loop', values }),
    ];
  },
};

/** What is left when everything that can be done has been done. */
const stuckOperations = (operations: readonly Operation[]): readonly Operation[] => {
  const done = new Set<string>();
  let left = operations;
  for (;;) {
    const ready = left.filter(
      ({ after }) => after.length === 0 || after.some((set) => set.every((id) => done.has(id))),
    );
    if (ready.length === 0) return left;
    for (const { id } of ready) done.add(id);
    left = left.filter((one) => !ready.includes(one));
  }
};

/** From any stuck operation to one it waits for, until one comes back. */
const loopAmong = (stuck: readonly Operation[]): readonly string[] => {
  const byId = new Map(stuck.map((one) => [one.id, one]));
  const trail: string[] = [];
  let next = stuck[0]?.id;
  while (next !== undefined && !trail.includes(next)) {
    trail.push(next);
    next = byId
      .get(next)
      ?.after.flat()
      .find((id) => byId.has(id));
  }
  return next === undefined ? [] : trail.slice(trail.indexOf(next));
};
