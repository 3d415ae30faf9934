import { fitsVariant, type Operation } from '@brinewright/equipment';
import { type Closure, leastClosure, type Ways } from './closure.ts';
import { sortedById } from './operation-kinds.ts';
import type { Scope } from './scope.ts';

export type Covering = {
  readonly operations: readonly Operation[];
  readonly restsOn: ReadonlyMap<string, ReadonlySet<string>>;
};

type Classes = readonly ReadonlyMap<string, Operation>[];
const known = new WeakMap<Scope, Classes>();

/** Each set of operations that some class of variants has, once. */
export const operationsByClass = (scope: Scope): Classes => {
  const classes = known.get(scope) ?? sortedOut(scope);
  known.set(scope, classes);
  return classes;
};

const sortedOut = (scope: Scope): Classes => {
  const sets = new Map<string, ReadonlyMap<string, Operation>>();
  for (const { variant } of scope.classes) {
    const fitting = [...scope.operations].filter(([, { fits }]) => fitsVariant(fits, variant));
    const key = fitting.map(([id]) => id).join();
    if (!sets.has(key)) sets.set(key, new Map(fitting));
  }
  return [...sets.values()];
};

/**
 * The least work for every class of variants, taken together: the plan covers all of them. What one class needs and
 * another has too is done for both, with what must come before it there.
 */
export const coveringClosure = (
  wants: readonly Ways[],
  classes: Classes,
  isSettled: (id: string) => boolean,
): Covering => {
  const found = classes.map((having) => closureOf(wants, having, isSettled));
  const all = new Map<string, Operation>();
  for (const [at, { members }] of found.entries())
    for (const id of members) {
      const operation = classes[at]?.get(id);
      if (operation !== undefined) all.set(id, operation);
    }
  const shared = classes.some((having, at) =>
    [...all.keys()].some((id) => having.has(id) && found[at]?.members.has(id) === false),
  );
  if (shared)
    return coveringClosure(
      [...all.keys()].map((id) => [[id]]),
      classes,
      isSettled,
    );
  return { operations: sortedById(all.values()), restsOn: restingOn(found) };
};

const restingOn = (found: readonly Closure[]): Covering['restsOn'] => {
  const restsOn = new Map<string, Set<string>>();
  for (const closure of found)
    for (const [id, way] of closure.restsOn) restsOn.set(id, new Set([...(restsOn.get(id) ?? []), ...way]));
  return restsOn;
};

const closureOf = (
  wants: readonly Ways[],
  having: ReadonlyMap<string, Operation>,
  isSettled: (id: string) => boolean,
): Closure => {
  const possible = wants
    .map((ways) => ways.filter((way) => way.every((id) => having.has(id))))
    .filter((ways) => ways.length > 0);
  return leastClosure(possible, having, isSettled);
};
