import type { Operation } from '@brinewright/equipment';
import { type Isolation, isolation, type Sheet } from '@brinewright/papers';
import type { WorkPlan } from '@brinewright/service';
import { type Pictures, pictures } from '../figure-view.ts';

const bypasses: Readonly<Record<WorkPlan['building'], Isolation['bypass']>> = {
  raw: 'there',
  'raw-or-none': 'not-known',
  none: 'none',
};

/** The valves of the line as they stand once it is shut, vented, seen to be so, or opened again. */
export const linePicture = (
  sheet: Sheet,
  { phase, needs, makes }: Operation,
  building: WorkPlan['building'],
): Pictures | undefined => {
  const isSeen = phase === 'isolate' && needs.pressure === 'none' && Object.keys(makes).length === 0;
  if (makes.water === undefined && makes.pressure === undefined && !isSeen) return undefined;
  const { water = 'on', pressure = 'full' } = { ...needs, ...makes };
  const state: Isolation = { water, pressure, bypass: bypasses[building] };
  return pictures(sheet, 'line', (options) => isolation(state, options));
};
