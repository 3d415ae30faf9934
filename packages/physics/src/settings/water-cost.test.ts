import { expect, it } from 'vitest';
import { filterWater, waterCost, waterWithLeak } from './water-cost.ts';

it('charges water twice: coming and going', () => {
  const cost = waterCost.compute({ waterVolume: 2, waterPrice: 2.5, sewerPrice: 3 });
  expect(cost.waterCost).toBeCloseTo(11, 12);
});

it('adds what leaks to what regenerates, and a rinse to a backwash', () => {
  expect(waterWithLeak.compute({ regenerationPerYear: 50, leakPerYear: 400 }).waterPerYear).toBe(450);
  const cycle = filterWater.compute({ backwashWater: 0.17, fastRinseWater: 0.09 });
  expect(cycle.regenerationWater).toBeCloseTo(0.26, 12);
});
