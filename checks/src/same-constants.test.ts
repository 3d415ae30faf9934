import * as physics from '@brinewright/physics';
import { constants, fromUnit, type QuantityKind } from '@brinewright/units';
import { expect, it } from 'vitest';

const si = (value: number, symbol: string, kind: QuantityKind): number => fromUnit(value, symbol, kind).si;

/** Physics may import no value from units; what both hold must be the same number. */
it.each([
  ['calcium', physics.molarMass.calcium, constants.molarMass.Ca],
  ['magnesium', physics.molarMass.magnesium, constants.molarMass.Mg],
  ['calcium carbonate', physics.molarMass.calciumCarbonate, constants.molarMass.CaCO3],
  ['common salt', physics.molarMass.sodiumChloride, constants.molarMass.NaCl],
  ['gravity', physics.standardGravity, constants.standardGravity],
  ['zero of the Celsius scale', physics.celsiusZero, si(0, 'degC', 'temperature')],
  ['an inch', physics.airGapNeeded.compute({ pipeDiameter: 0 }).airGap, constants.inch],
])('%s is the same in physics and in units', (_what, ours, theirs) => {
  expect(ours).toBe(theirs);
});

it('a day and a year are the same in physics and in units', () => {
  const year = { serviceTime: si(1, 'yr', 'time'), saltMass: 1, regenerationWater: 1 };
  expect(physics.yearlyUse.compute(year).saltPerYear).toBe(1);
  expect(physics.averageUse.compute({ dailyUse: constants.day }).averageUse).toBe(1);
});

it('the pairs of dose and capacity are those of the units the trade writes them in', () => {
  const capacityAt = (pounds: number): number =>
    physics.capacityFromDose.compute({ saltDose: si(pounds, 'lb/ft3', 'salt-dose') }).capacity;
  for (const [pounds, kilograins] of [
    [6, 20],
    [10, 24.5],
    [15, 30],
  ] as const)
    expect(capacityAt(pounds) / si(kilograins, 'kgr/ft3', 'capacity')).toBeCloseTo(1, 12);
});
