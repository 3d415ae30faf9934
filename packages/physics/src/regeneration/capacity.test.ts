import { describe, expect, it } from 'vitest';
import { agedCapacity, capacityFromDose } from './capacity.ts';

const poundPerCubicFoot = 16.01846337;
const kilograinPerCubicFoot = 45.72730119;
const kilograins = (pounds: number): number =>
  capacityFromDose.compute({ saltDose: pounds * poundPerCubicFoot }).capacity / kilograinPerCubicFoot;

describe('capacity at a salt dose', () => {
  it('meets the trade pairs and goes straight between them', () => {
    expect(kilograins(6)).toBeCloseTo(20, 6);
    expect(kilograins(8)).toBeCloseTo(22.25, 6);
    expect(kilograins(10)).toBeCloseTo(24.5, 6);
    expect(kilograins(12.5)).toBeCloseTo(27.25, 6);
    expect(kilograins(15)).toBeCloseTo(30, 6);
  });

  it('is proportional to the dose below the pairs and constant above', () => {
    expect(kilograins(3)).toBeCloseTo(10, 6);
    expect(kilograins(20)).toBeCloseTo(30, 6);
  });

  it('is judged in range at its ends and out of range beyond', () => {
    const [rule] = capacityFromDose.meta.range;
    expect(rule?.min).toBeLessThanOrEqual(6 * poundPerCubicFoot);
    expect(rule?.max).toBeGreaterThanOrEqual(15 * poundPerCubicFoot);
    expect(rule?.max).toBeLessThan(15.01 * poundPerCubicFoot);
  });

  it('loses 5 % in the first year of the manual', () => {
    const year = 365.25 * 86400;
    expect(
      agedCapacity.compute({ capacity: 1000, resinAge: year, yearlyLoss: 0.05 }).agedCapacity,
    ).toBeCloseTo(950, 9);
  });
});
