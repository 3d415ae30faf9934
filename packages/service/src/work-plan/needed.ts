import type { Operation } from '@brinewright/equipment';
import { isPreparation, withinReach } from './aims.ts';
import { comesOff } from './came-off.ts';
import { isListed, type Ways } from './closure.ts';
import { type Covering, coveringClosure, operationsByClass } from './covering.ts';
import { makersFor } from './makers.ts';
import { isLater, isReversible } from './operation-kinds.ts';
import type { Present } from './present.ts';
import type { Scope } from './scope.ts';
import { holds, isShut } from './state.ts';

/** What is still to be done to reach the aims, and what each of them must come after. */
export type Needed = Covering & {
  /** The water goes off, is off or was. */
  readonly shuts: boolean;
};

/** The water goes off whatever the aims say; or what was done once counts for nothing. */
export type NeededOptions = { readonly forced?: boolean; readonly again?: boolean };

/**
 * The least that gets the aims done from where the work stands: what stands in the way, what makes the states it
 * needs, and the preparation that belongs to every plan which shuts the water. Nothing else.
 */
export const neededFor = (
  aims: readonly Ways[],
  scope: Scope,
  present: Present,
  more: NeededOptions = {},
): Needed => {
  const isMet = (ways: Ways): boolean => ways.some((way) => way.every((id) => present.done.has(id)));
  const isForced = more.forced === true || isOpenUnderWater(present);
  const wants = (more.again === true ? aims : aims.filter((ways) => !isMet(ways))).filter(
    (ways) => !ways.every((way) => way.some((id) => isTooLate(id, scope, present))),
  );
  const wanted = new Set(wants.flat(2));
  const classes = operationsByClass(scope);
  const settled = (id: string): boolean =>
    isSettled(id, scope, present) || isLeftToRestore(id, scope, wanted);
  for (let added: readonly Ways[] = []; ; ) {
    const found = coveringClosure([...wants, ...added], classes, settled);
    const shutsAhead = isForced || found.operations.some(shutsWater);
    const missing = [
      ...(shutsAhead ? preparation(found.operations, scope, present) : []),
      ...makers(found.operations, scope, present),
    ].filter((ways) => !includesAny(found.operations, ways) && !isListed(added, ways));
    if (missing.length === 0)
      return { ...found, shuts: shutsAhead || present.wasShut || isShut(present.state) };
    added = [...added, ...missing];
  }
};

/** Restoring belongs to putting back; what it asks for beforehand is settled there. */
const isLeftToRestore = (id: string, scope: Scope, wanted: ReadonlySet<string>): boolean => {
  const operation = scope.operations.get(id);
  return operation !== undefined && isLater(operation) && operation.always && !wanted.has(id);
};

const includesAny = (operations: readonly Operation[], ways: Ways): boolean =>
  ways.some((way) => way.every((id) => operations.some((operation) => operation.id === id)));

const shutsWater = ({ needs, makes }: Operation): boolean => isShut(needs) || isShut(makes);

/** Off already, or done and still so. */
const isSettled = (id: string, scope: Scope, present: Present): boolean => {
  const operation = scope.operations.get(id);
  if (operation === undefined) return present.done.has(id);
  if (isReversible(operation)) return present.off.some((off) => off.operation.id === id);
  if (isLater(operation)) return present.restored.has(id);
  if (operation.phase === 'isolate' && !present.prepared.has(id)) return false;
  return present.done.has(id) && holds(present.state, operation.makes);
};

/** Operations marked `always`, as far as what they come after is planned or preparation itself. */
const preparation = (planned: readonly Operation[], scope: Scope, present: Present): readonly Ways[] => {
  const given = new Set([...planned.map(({ id }) => id), ...present.done]);
  const all = [...scope.operations.values()].filter(isPreparation);
  return withinReach(all, given)
    .filter((operation) => operation.always && !isSettled(operation.id, scope, present))
    .filter(({ id }) => !isTooLate(id, scope, present))
    .map(({ id }) => [[id]]);
};

/** Something is off that comes off without water, and the water is on as far as anybody wrote. */
export const isOpenUnderWater = ({ off, state }: Present): boolean =>
  state.water !== 'off' && off.some(({ operation }) => comesOff(operation) && isShut(operation.needs));

/** What is noted before the work is not noted any more once the state it is read in is gone. */
const isTooLate = (id: string, { operations }: Scope, present: Present): boolean => {
  const operation = operations.get(id);
  if (operation?.phase !== 'record') return false;
  const { water, pressure } = operation.needs;
  const isShutFirst = isOpenUnderWater(present) && (water === 'on' || pressure === 'full');
  return isShutFirst || !holds(present.state, operation.needs);
};

const makers = (planned: readonly Operation[], scope: Scope, present: Present): readonly Ways[] =>
  makersFor(
    [...planned.filter((one) => !isLater(one)), ...openNeeds(present)],
    [...scope.operations.values()].filter((one) => !isLater(one)),
    present.state,
  );

/** A unit that stands open is kept without water, pressure and power; its piston is no longer led by the drive. */
const openNeeds = ({ off }: Present): readonly Operation[] =>
  off
    .filter(({ operation }) => comesOff(operation))
    .map(({ operation }) => {
      const { piston: _, ...needs } = operation.needs;
      return { ...operation, needs, makes: {}, phase: 'isolate' };
    });
