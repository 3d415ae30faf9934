import type { Operation } from '@brinewright/equipment';
import { byText, roundTripMinutes } from './operation-kinds.ts';

/** Ways to get something done: alternatives, each a set of operations. */
export type Ways = readonly (readonly string[])[];

export const isListed = (list: readonly Ways[], ways: Ways): boolean =>
  list.some((other) => other.join('|') === ways.join('|'));

/** What must be done, and which alternative each operation rests on. */
export type Closure = {
  readonly members: ReadonlySet<string>;
  readonly restsOn: ReadonlyMap<string, readonly string[]>;
  readonly minutes: number;
};

type Problem = {
  readonly operations: ReadonlyMap<string, Operation>;
  readonly isSettled: (id: string) => boolean;
  readonly wants: ReadonlyMap<string, Ways>;
};
type Search = { best: Closure | undefined; looped: boolean; readonly seen: Set<string> };

/**
 * The least work, by minutes of doing and undoing, that gets everything wanted done: exact over the alternatives
 * in `after`, by branch and bound that never visits one set of operations twice. Equal minutes: the alternative
 * whose ids sort first.
 *
 * An alternative with an operation this variant lacks gives way to one without; where all have such, what the
 * variant lacks does not stand in the way.
 * @throws Error when operations wait for one another whatever is chosen (the linter refuses such definitions).
 */
export const leastClosure = (
  wants: readonly Ways[],
  operations: ReadonlyMap<string, Operation>,
  isSettled: (id: string) => boolean,
): Closure => {
  const roots = new Map(wants.map((ways, place) => [`want:${place}`, ways]));
  const search: Search = { best: undefined, looped: false, seen: new Set() };
  const start = { members: new Set<string>(), restsOn: new Map<string, readonly string[]>(), minutes: 0 };
  descend({ operations, isSettled, wants: roots }, search, [...roots.keys()], start);
  if (search.best === undefined) throw new Error('operations-wait-for-one-another');
  return search.best;
};

const descend = (problem: Problem, search: Search, pending: readonly string[], so: Closure): void => {
  if (search.best !== undefined && so.minutes > search.best.minutes - 1e-9) return;
  const [id, ...rest] = pending;
  if (id === undefined) {
    search.best = so;
    return;
  }
  const ways = waysOf(problem, id);
  if (ways.length > 1 && wasHere(search, pending, so)) return;
  for (const way of cheapestFirst(problem, ways, so)) {
    if (wouldLoop(so.restsOn, id, way)) {
      search.looped = true;
      continue;
    }
    const added = way.filter((next) => !so.members.has(next));
    descend(problem, search, [...rest, ...added], grown(problem, so, id, way, added));
  }
};

/** The minutes follow from the set, so a second visit cannot be cheaper; a loop on the way in could differ. */
const wasHere = (search: Search, pending: readonly string[], so: Closure): boolean => {
  const key = `${[...pending].sort(byText).join()}|${[...so.members].sort(byText).join()}`;
  if (search.seen.has(key)) return !search.looped;
  search.seen.add(key);
  return false;
};

const waysOf = ({ operations, isSettled, wants }: Problem, id: string): Ways => {
  const written = wants.get(id) ?? operations.get(id)?.after ?? [[]];
  const fitting = written.filter((way) => way.every((next) => operations.has(next) || isSettled(next)));
  const usable = fitting.length > 0 ? fitting : written.map((way) => way.filter((n) => operations.has(n)));
  const open = usable.map((way) => [...way].filter((next) => !isSettled(next)).sort(byText));
  return open.length > 0 ? open : [[]];
};

const cheapestFirst = (problem: Problem, ways: Ways, so: Closure): Ways =>
  ways.length < 2
    ? ways
    : ways
        .map((way) => ({ way, cost: addedMinutes(problem, way, so), key: way.join() }))
        .sort((a, b) => (Math.abs(a.cost - b.cost) > 1e-9 ? a.cost - b.cost : byText(a.key, b.key)))
        .map(({ way }) => way);

const addedMinutes = ({ operations }: Problem, way: readonly string[], so: Closure): number =>
  way.reduce((sum, id) => {
    const operation = operations.get(id);
    return operation === undefined || so.members.has(id) ? sum : sum + roundTripMinutes(operation);
  }, 0);

const grown = (
  problem: Problem,
  so: Closure,
  id: string,
  way: readonly string[],
  added: readonly string[],
): Closure => ({
  members: added.length === 0 ? so.members : new Set([...so.members, ...added]),
  restsOn: problem.wants.has(id) ? so.restsOn : new Map(so.restsOn).set(id, way),
  minutes: so.minutes + addedMinutes(problem, way, so),
});

const wouldLoop = (
  restsOn: ReadonlyMap<string, readonly string[]>,
  id: string,
  way: readonly string[],
): boolean => {
  const seen = new Set<string>();
  const reaches = (from: string): boolean => {
    if (from === id) return true;
    if (seen.has(from)) return false;
    seen.add(from);
    return (restsOn.get(from) ?? []).some(reaches);
  };
  return way.some(reaches);
};
