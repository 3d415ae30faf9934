import type { Fault } from '@brinewright/equipment';
import { at } from '../recognition/bayes.ts';
import { type Grouping, groupBy, groupOdds } from '../recognition/prospect.ts';
import { byThenId } from '../stage/rank.ts';
import { type ActionGroup, noneOfThese } from './diagnosis.ts';
import type { Hypotheses } from './hypotheses.ts';

export type ActionGroups = Grouping & { readonly keys: readonly string[] };

/** Hypotheses gathered by what mends them. */
export const actionGroups = ({ faults }: Hypotheses): ActionGroups =>
  groupBy([...faults.map(repairKey), noneOfThese]);

/** Faults with nothing to replace, do or set are mended each in its own way, as its definition says. */
export const repairKey = ({ id, repair }: Fault): string => {
  const parts = [
    ...repair.replace.map((role) => `replace:${role}`),
    ...repair.do.map((operation) => `do:${operation}`),
    ...(repair.settings ? ['settings'] : []),
  ].sort();
  return parts.length === 0 ? `mend:${id}` : parts.join(';');
};

/** Faults that share a repair are named from these odds on; ours. */
const worthNaming = 0.05;

/** The groups with their faults, each list the likeliest first. */
export const rankedGroups = (
  { ids }: Hypotheses,
  groups: ActionGroups,
  odds: Float64Array,
): readonly ActionGroup[] => {
  const total = groupOdds(odds, groups);
  const byOdds = byThenId(
    (h: number) => at(odds, h),
    (h) => ids[h] ?? '',
  );
  return groups.keys
    .map((key, g) => ({ key, p: at(total, g), faults: membersOf(groups, g).sort(byOdds) }))
    .map(({ key, p, faults }) => ({
      key,
      p,
      faults: faults.flatMap((h) => ids[h] ?? []),
      named: faults.flatMap((h, place) => (place === 0 || at(odds, h) >= worthNaming ? (ids[h] ?? []) : [])),
    }))
    .sort(
      byThenId(
        ({ p }) => p,
        ({ key }) => key,
      ),
    );
};

const membersOf = (groups: ActionGroups, g: number): number[] =>
  [...groups.of.keys()].filter((h) => at(groups.of, h) === g);
