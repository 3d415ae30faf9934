import type { Family, Tell } from '@brinewright/equipment';
import { byThenId } from '../stage/rank.ts';
import { at } from './bayes.ts';
import type { DecisionGroups } from './decision-groups.ts';
import { prospect } from './prospect.ts';
import type { Access, Belief, NextTell } from './recognition.ts';
import { type TellTable, tellTables } from './tell-table.ts';
import { variantSpace } from './variant-space.ts';

/** Less than this about the decision is not worth a look. */
const leastBits = 0.01;

/** No look is shorter than this; keeps the worth per minute finite. */
const leastMinutes = 0.25;

/** Tells not yet answered, the one worth most per minute for the decision first. */
export const nextTells = (
  family: Family,
  belief: Belief,
  groups: DecisionGroups,
  answered: ReadonlySet<string>,
  access: Access,
): readonly NextTell[] =>
  family.tells
    .filter(({ id }) => !answered.has(id))
    .map((tell) => worthOf(family, belief, groups, tell, access))
    .filter(({ worth }) => worth >= leastBits)
    .sort(
      byThenId(
        ({ perMinute }) => perMinute,
        ({ tell }) => tell.id,
      ),
    );

const worthOf = (
  family: Family,
  belief: Belief,
  groups: DecisionGroups,
  tell: Tell,
  access: Access,
): NextTell => {
  const table = tellTables(family).get(tell.id) ?? { answers: [], rows: [], allows: [] };
  const { bits, answers } = prospect(belief.odds, groups, table);
  const minutes = tell.minutes + access(tell.after);
  return {
    tell,
    worth: bits,
    minutes,
    perMinute: bits / Math.max(minutes, leastMinutes),
    leaves: table.answers.map((answer, place) => ({
      answer,
      p: answers[place]?.p ?? 0,
      groups: groupsLeft(family, belief, groups, table, place),
    })),
  };
};

const groupsLeft = (
  family: Family,
  belief: Belief,
  groups: DecisionGroups,
  table: TellTable,
  place: number,
): number => {
  const row = table.rows[place] ?? new Float64Array();
  const after = { odds: row.map((p, v) => p * at(belief.odds, v)) };
  return new Set(
    variantSpace(family)
      .remaining(after)
      .map((v) => at(groups.of, v)),
  ).size;
};
