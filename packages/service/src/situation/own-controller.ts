import type { Controller, QuantityRange } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import type { Conditioner } from '../visit/schema.ts';

const minute = 60;

/** One minute to 99 by one: what most controllers hold; used where nobody wrote it down. Common practice. */
const usualTimes: QuantityRange = {
  min: quantity('time', minute),
  max: quantity('time', 99 * minute),
  by: quantity('time', minute),
};

/** A controller nobody has described, as written on the visit. */
export const ownController = (conditioner: Conditioner): Controller | undefined => {
  const own = conditioner.controller;
  if (own === undefined) return undefined;
  const { days } = own;
  return {
    id: 'own',
    title: 'own',
    holds: own.holds,
    times: own.times ?? usualTimes,
    starts: own.starts ?? [],
    ...(own.volumes === undefined ? {} : { volumes: own.volumes }),
    ...(days === undefined ? {} : { days: { min: days.min.si, max: days.max.si, by: days.by?.si ?? 1 } }),
  };
};
