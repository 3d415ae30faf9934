import { expect, it } from 'vitest';
import { flowLimits, volumeLimits } from './tolerance.ts';

it('lays limits evenly about what is expected', () => {
  expect(flowLimits.compute({ expectedFlow: 10, tolerance: 0.1 })).toEqual({ lowerFlow: 9, upperFlow: 11 });
  const { lowerVolume, upperVolume } = volumeLimits.compute({ expectedVolume: 8, tolerance: 0.05 });
  expect([lowerVolume, upperVolume]).toEqual([7.6, 8.4]);
});

it('refuses a tolerance beyond the whole', () => {
  expect(() => flowLimits.compute({ expectedFlow: 1, tolerance: 1.2 })).toThrow(RangeError);
});
