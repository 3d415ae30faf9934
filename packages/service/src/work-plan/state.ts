import type { WorkState } from '@brinewright/equipment';

export const stateKeys = ['water', 'pressure', 'power', 'piston', 'temperature'] as const;
export type StateKey = (typeof stateKeys)[number];

/** A unit at work. Temperature is added where it is known to be cool. */
export const atWork: WorkState = { water: 'on', pressure: 'full', power: 'on', piston: 'home' };

/** The keys in which a state is not as wanted. */
export const unmet = (state: WorkState, wanted: WorkState): readonly StateKey[] =>
  stateKeys.filter((key) => wanted[key] !== undefined && wanted[key] !== state[key]);

export const holds = (state: WorkState, wanted: WorkState): boolean => unmet(state, wanted).length === 0;

export const changesNothing = (makes: WorkState): boolean =>
  stateKeys.every((key) => makes[key] === undefined);

/** Water on brings pressure, whether the definition says so or not. */
export const withPressure = (makes: WorkState): WorkState =>
  makes.water === 'on' && makes.pressure === undefined ? { ...makes, pressure: 'full' } : makes;

export const changed = (state: WorkState, makes: WorkState): WorkState => ({
  ...state,
  ...withPressure(makes),
});

/** What undoes `makes`: the same keys as they stood before. */
export const reverse = (makes: WorkState, before: WorkState): WorkState => ({
  ...(makes.water === undefined || before.water === undefined ? {} : { water: before.water }),
  ...(makes.pressure === undefined || before.pressure === undefined ? {} : { pressure: before.pressure }),
  ...(makes.power === undefined || before.power === undefined ? {} : { power: before.power }),
  ...(makes.piston === undefined || before.piston === undefined ? {} : { piston: before.piston }),
});

/** Whether a state or what makes it has the water shut off from the unit or its pressure let go. */
export const isShut = (state: WorkState): boolean => state.water === 'off' || state.pressure === 'none';
