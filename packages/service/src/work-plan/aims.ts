import type { Operation } from '@brinewright/equipment';
import type { Target } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import { stockIds } from '../stock-ids.ts';
import type { Ways } from './closure.ts';
import { isLater, isStrip } from './operation-kinds.ts';
import type { Scope } from './scope.ts';

/** What the targets come to: things to get done, parts that go in new, and what no operation reaches. */
export type Aims = {
  readonly ways: readonly Ways[];
  readonly newRoles: ReadonlySet<string>;
  readonly wholeStack: boolean;
  readonly unreached: readonly Target[];
};

/** One known bad seal means the stack: common practice, no source. */
export const aimsOf = (repair: RepairPlan, scope: Scope): Aims => {
  const { targets } = repair;
  const roles = rolesOf(targets, scope);
  const inStack = new Set<string>(scope.family.stack.map(({ is }) => is));
  const wholeStack = [...roles].some((role) => inStack.has(role)) && countsStack(scope);
  const seals = wholeStack
    ? [stockIds.roles.seal, stockIds.roles.spacer].filter((role) => inStack.has(role))
    : [];
  return {
    ways: targets.flatMap((target) => waysTo(target, scope)),
    newRoles: new Set([...roles, ...seals, ...rolesOfParts(repair, scope)]),
    wholeStack,
    unreached: targets.filter((target) => target.kind !== 'settings' && waysTo(target, scope).length === 0),
  };
};

/** Parts of the repair and what its kits hold. */
const rolesOfParts = (repair: RepairPlan, { family }: Scope): readonly string[] => {
  const lines = [...repair.parts, ...repair.differs.flatMap(({ parts }) => parts)];
  const named = new Set(lines.map(({ part }) => part));
  const held = family.parts.filter(({ id }) => named.has(id)).flatMap(({ holds }) => Object.keys(holds));
  return family.parts.filter(({ id }) => named.has(id) || held.includes(id)).map(({ is }) => is);
};

const countsStack = (scope: Scope): boolean =>
  [...scope.operations.values()].some(({ counts }) => counts === 'stack');

const waysTo = (target: Target, scope: Scope): readonly Ways[] => {
  switch (target.kind) {
    case 'replace':
      return waysToRole(target.role, scope);
    case 'operation':
      return scope.operations.has(target.operation) ? [[[target.operation]]] : [];
    case 'settings':
      return settingsOperations(scope).map(({ id }) => [[id]]);
    case 'convert':
      return [...rolesOf([target], scope)].flatMap((role) => waysToRole(role, scope));
  }
};

/** Any operation that takes the part out will do; pieces of the stack leave with the whole stack. */
const waysToRole = (role: string, scope: Scope): readonly Ways[] => {
  const taking = [...scope.operations.values()].filter(({ takesOut }) => takesOut.includes(role));
  const stacks = taking.filter(({ counts }) => counts === 'stack');
  const ways = (stacks.length > 0 ? stacks : taking).map(({ id }) => [id]);
  return ways.length > 0 ? [ways] : [];
};

/** Whether everything that a target comes to is done; never for what no operation reaches. */
export const isReached = (target: Target, scope: Scope, isDone: (id: string) => boolean): boolean => {
  const wanted = waysTo(target, scope);
  return wanted.length > 0 && wanted.every((ways) => ways.some((way) => way.every(isDone)));
};

const rolesOf = (targets: readonly Target[], scope: Scope): ReadonlySet<string> =>
  new Set(
    targets.flatMap((target) => {
      if (target.kind === 'replace') return [target.role];
      return target.kind === 'convert' ? convertedRoles(target.feature, target.to, scope) : [];
    }),
  );

/** Parts that differ with the feature, and what else the family knows of the conversion. Kits are no part of a valve. */
const convertedRoles = (feature: string, to: string, { family }: Scope): readonly string[] => {
  const also = new Set(
    family.conversions.filter((c) => c.feature === feature && c.to === to).flatMap((c) => c.also),
  );
  return family.parts
    .filter(({ id, is, fits }) => is !== 'kit' && (fits[feature] !== undefined || also.has(id)))
    .map(({ is }) => is);
};

/** Writing down what is set, and whatever the faults of wrong settings name as setting it anew. */
const settingsOperations = ({ family, operations }: Scope): readonly Operation[] => {
  const sets = new Set(
    family.faults.filter(({ repair }) => repair.settings).flatMap(({ repair }) => repair.do),
  );
  return [...operations.values()].filter(
    (operation) =>
      (operation.phase === 'record' && operation.always) || (isLater(operation) && sets.has(operation.id)),
  );
};

/** Those whose own needs lie among them or are given; the others belong to work that is not planned. */
export const withinReach = (
  operations: readonly Operation[],
  given: ReadonlySet<string>,
): readonly Operation[] => {
  const ids = new Set(operations.map(({ id }) => id));
  const left = operations.filter(({ after }) =>
    after.length === 0 ? true : after.some((way) => way.every((id) => ids.has(id) || given.has(id))),
  );
  return left.length === operations.length ? left : withinReach(left, given);
};

/** Preparation that belongs to every plan which shuts the water. */
export const isPreparation = (operation: Operation): boolean => !isStrip(operation) && !isLater(operation);
