import { describe, expect, it } from 'vitest';
import { waterDensity } from '../water/density.ts';
import { brineDensity } from './density.ts';

describe('density of brine', () => {
  it('is that of water when there is no salt in it', () => {
    const temperature = 288.15;
    const brine = brineDensity.compute({ temperature, massFraction: 0 }).density;
    expect(brine).toBeCloseTo(waterDensity.compute({ temperature }).density, 2);
  });

  it('refuses a negative mass fraction', () => {
    expect(() => brineDensity.compute({ temperature: 288.15, massFraction: -0.01 })).toThrow(RangeError);
  });
});
