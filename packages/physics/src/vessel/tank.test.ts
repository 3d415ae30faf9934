import { describe, expect, it } from 'vitest';
import { bedVolume, crossSection, freeHeight, insideDiameter, tankVolume, upflowRate } from './tank.ts';

describe('a round tank', () => {
  it('loses two walls from the diameter a tape gives', () => {
    const { diameter } = insideDiameter.compute({ girth: Math.PI * 0.41, wallThickness: 0.005 });
    expect(diameter).toBeCloseTo(0.4, 12);
  });

  it('has no inside when the wall is thicker than the radius', () => {
    expect(() => insideDiameter.compute({ girth: 0.1, wallThickness: 0.02 })).toThrow(RangeError);
  });

  it('holds cross-section times depth', () => {
    const { area } = crossSection.compute({ diameter: 0.4 });
    expect(bedVolume.compute({ diameter: 0.4, bedDepth: 0.9 }).volume).toBeCloseTo(area * 0.9, 15);
    expect(tankVolume.compute({ diameter: 0.4, height: 1.5 }).volume).toBeCloseTo(area * 1.5, 15);
  });

  it('tells the free height, below nothing where the measurements disagree', () => {
    expect(freeHeight.compute({ vesselHeight: 1.4, bedDepth: 0.9 }).freeHeight).toBeCloseTo(0.5, 15);
    expect(freeHeight.compute({ vesselHeight: 0.8, bedDepth: 0.9 }).freeHeight).toBeLessThan(0);
  });

  it('turns a flow into the rate that lifts the bed', () => {
    const { area } = crossSection.compute({ diameter: 0.4 });
    const { superficialVelocity } = upflowRate.compute({ flow: 3e-4, diameter: 0.4 });
    expect(superficialVelocity * area).toBeCloseTo(3e-4, 15);
  });
});
