import { describe, expect, it } from 'vitest';
import { bedExpansion, bedExpansionMethods, upflowForRise } from './bed-expansion.ts';

const resin = { diameter: 6e-4, particleDensity: 1280, voidage: 0.38, density: 999.7, viscosity: 1.306e-3 };

describe('bed expansion by a named method', () => {
  it('says which method made the answer', () => {
    for (const method of bedExpansionMethods)
      expect(bedExpansion({ ...resin, method, superficialVelocity: 3.4e-3 })).toMatchObject({
        method,
        state: 'lifted',
      });
  });

  it('leaves the bed lying below the rate that lifts it', () => {
    for (const method of bedExpansionMethods)
      expect(bedExpansion({ ...resin, method, superficialVelocity: 1e-4 })).toEqual({
        method,
        state: 'settled',
        expandedVoidage: resin.voidage,
        expansion: 0,
      });
  });

  it('says that the beads leave when the rate exceeds what any voidage holds', () => {
    for (const method of bedExpansionMethods)
      expect(bedExpansion({ ...resin, method, superficialVelocity: 0.1 })).toEqual({
        method,
        state: 'carried-off',
      });
  });

  it('lifts colder, thicker water higher at the same rate', () => {
    const cold = bedExpansion({ ...resin, method: 'ergun', superficialVelocity: 3e-3, viscosity: 1.5e-3 });
    const warm = bedExpansion({ ...resin, method: 'ergun', superficialVelocity: 3e-3, viscosity: 0.8e-3 });
    if (cold.state !== 'lifted' || warm.state !== 'lifted') throw new Error('both should be lifted');
    expect(cold.expansion).toBeGreaterThan(warm.expansion);
  });

  it('takes the constants of grains that are not spheres', () => {
    const rough = { ...resin, viscousConstant: 228, inertialConstant: 4.4 };
    const spheres = bedExpansion({ ...resin, method: 'ergun', superficialVelocity: 3e-3 });
    const grains = bedExpansion({ ...rough, method: 'ergun', superficialVelocity: 3e-3 });
    if (spheres.state !== 'lifted' || grains.state !== 'lifted') throw new Error('both should be lifted');
    expect(grains.expansion).toBeGreaterThan(spheres.expansion);
  });

  it('puts the ceiling at 50 °F, 18 in of rise over 34 in, within 6 % below the handbook’s 5.7 gpm/ft²', () => {
    const inch = 0.0254;
    const rate = upflowForRise({ ...resin, method: 'richardson-zaki', bedDepth: 34 * inch, rise: 18 * inch });
    // Another drag law sinks the bead up to 4.5 % faster; the rest is the rounding of the figure.
    const figure = 5.7 * 6.79097e-4;
    expect(rate / figure).toBeGreaterThan(0.94);
    expect(rate / figure).toBeLessThan(1);
  });

  it('throws on grains that float', () => {
    expect(() =>
      bedExpansion({ ...resin, particleDensity: 900, method: 'ergun', superficialVelocity: 1e-3 }),
    ).toThrow(RangeError);
  });
});
