import type { Issue } from '@brinewright/words';
import { type BoreDefinition, type JoinRow, type Port, type Stop, stops } from '../model/bore.ts';
import { type LintRule, type LintSubject, lintIssue } from './lint-rule.ts';

type Pair = readonly [Port, Port];

/** What each stop is for: down through the bed, up through it, brine out at the bottom, down to the drain. */
const serves: Readonly<Record<Stop, readonly Pair[]>> = {
  service: [
    ['IN', 'TOP'],
    ['BOT', 'OUT'],
  ],
  backwash: [
    ['IN', 'BOT'],
    ['TOP', 'DR'],
  ],
  brine: [['BOT', 'DR']],
  'fast-rinse': [
    ['IN', 'TOP'],
    ['BOT', 'DR'],
  ],
  refill: [],
};

/** Water that would run away past the bed, at any stop; and raw water to the taps in service. */
const runsAway: readonly Pair[] = [
  ['OUT', 'DR'],
  ['IN', 'DR'],
];
const mixes: readonly Pair[] = [['IN', 'OUT']];

/** The joins of every stop serve the cycle and nothing else. */
export const cycleJoins: LintRule = {
  code: 'lint.join-missing',
  check: (subject) =>
    subject.family.bores.flatMap((bore) =>
      bore.rows.flatMap((row, index) => stops.flatMap((stop) => atStop(subject, bore, row, index, stop))),
    ),
};

const atStop = (
  subject: LintSubject,
  bore: BoreDefinition,
  row: JoinRow,
  index: number,
  stop: Stop,
): readonly Issue[] => {
  const groups = row.joins[stop];
  const has = ([a, b]: Pair): boolean => groups.some((group) => group.includes(a) && group.includes(b));
  const isHere = (pair: Pair): boolean => pair.every((port) => bore.ports.includes(port));
  const isUsed = groups.length > 0;
  const missing = isUsed ? serves[stop].filter((pair) => isHere(pair) && !has(pair)) : [];
  const wrong = [...runsAway, ...(stop === 'service' ? mixes : [])].filter(has);
  const report = (code: 'lint.join-missing' | 'lint.join-forbidden', pair: Pair): Issue =>
    lintIssue(subject, 'error', ['bores', bore.id, 'joins', index, stop], {
      code,
      values: { stop, join: pair.join('+') },
    });
  return [
    ...missing.map((pair) => report('lint.join-missing', pair)),
    ...wrong.map((pair) => report('lint.join-forbidden', pair)),
  ];
};
