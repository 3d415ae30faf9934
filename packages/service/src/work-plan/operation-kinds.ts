import type { Operation, WorkState } from '@brinewright/equipment';
import { isShut } from './state.ts';

/** Taking apart and working; everything before is preparation, everything after puts the unit to work again. */
export const isStrip = ({ phase }: Operation): boolean => phase === 'open' || phase === 'work';

export const isLater = ({ phase }: Operation): boolean => phase === 'restore' || phase === 'prove';

/** What came off goes back: said in the definition, or because a part left the valve with it. */
export const isReversible = (operation: Operation): boolean =>
  !isLater(operation) &&
  (operation.back !== undefined || operation.takesOut.length > 0 || operation.counts !== undefined);

/** Shuts, opens or works inside: what was restored and swept before no longer counts. */
export const opensUp = (operation: Operation): boolean =>
  operation.phase === 'isolate' || isReversible(operation) || (isStrip(operation) && isShut(operation.needs));

/** What is opened without water in it is opened cool, also where its pressure is gone already. */
export const needsOf = (operation: Operation): WorkState =>
  isStrip(operation) && isShut(operation.needs)
    ? { ...operation.needs, temperature: 'cool' }
    : operation.needs;

export const forwardMinutes = ({ minutes }: Operation): number => minutes.hands + minutes.waiting;

/** Where the definition is silent, putting back takes as long as taking off. */
export const backMinutes = (operation: Operation): number =>
  isReversible(operation) ? (operation.back?.minutes ?? operation.minutes.hands) : 0;

/** Doing and undoing. */
export const roundTripMinutes = (operation: Operation): number =>
  forwardMinutes(operation) + backMinutes(operation);

/** Text that sorts by code unit, as ids do everywhere. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const sortedById = (operations: Iterable<Operation>): readonly Operation[] =>
  [...operations].sort((a, b) => byText(a.id, b.id));

const suffix = '.back';
export const sweepId = 'sweep';

/** Under which id a thing done is written down. */
export const backId = (stepId: string): string => `${stepId}${suffix}`;

export const instanceId = (operation: string, instance: number): string =>
  instance === 1 ? operation : `${operation}#${instance}`;

/** What an entry in `visit.done` speaks of: an operation, and whether it was put back. */
export const spokenOf = (written: string): { readonly operation: string; readonly back: boolean } => {
  const back = written.endsWith(suffix);
  const id = back ? written.slice(0, -suffix.length) : written;
  const hash = id.indexOf('#');
  return { operation: hash < 0 ? id : id.slice(0, hash), back };
};
