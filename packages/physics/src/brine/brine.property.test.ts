import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waterDensity } from '../water/density.ts';
import { brineDensity } from './density.ts';
import { brineMade, saltPerWater } from './dissolve.ts';
import { salometerBrine, salometerReading } from './salometer.ts';
import { saltSolubility } from './solubility.ts';

const settings = { numRuns: 100, seed: 20_260_101 };
const temperatures = fc.double({ min: 273.15, max: 353.15, noNaN: true });
const strengths = fc.double({ min: 0, max: 0.26, noNaN: true });

describe('brine', () => {
  it('is denser the more salt it holds', () => {
    fc.assert(
      fc.property(temperatures, strengths, (temperature, massFraction) => {
        const weaker = brineDensity.compute({ temperature, massFraction }).density;
        const stronger = brineDensity.compute({ temperature, massFraction: massFraction + 0.001 }).density;
        expect(stronger).toBeGreaterThan(weaker);
      }),
      settings,
    );
  });

  it('made from salt and water holds all their mass but the salt beyond saturation', () => {
    fc.assert(
      fc.property(
        temperatures,
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 1e-3, max: 0.1, noNaN: true }),
        (temperature, saltMass, waterVolume) => {
          const saturation = saltSolubility.compute({ temperature }).massFraction;
          const made = brineMade.compute({ saltMass, waterVolume, temperature, saturation });
          const water = waterDensity.compute({ temperature }).density * waterVolume;
          const { density } = brineDensity.compute({ temperature, massFraction: made.massFraction });
          expect(made.massFraction).toBeLessThanOrEqual(saturation + 1e-12);
          expect(made.dissolvedSalt).toBeLessThanOrEqual(saltMass);
          expect(density * made.brineVolume).toBeCloseTo(made.dissolvedSalt + water, 9);
        },
      ),
      settings,
    );
  });

  it('saturated holds what the water can dissolve', () => {
    fc.assert(
      fc.property(temperatures, (temperature) => {
        const saturation = saltSolubility.compute({ temperature }).massFraction;
        const most = saltPerWater.compute({ temperature, massFraction: saturation }).saltPerWater;
        const made = brineMade.compute({ saltMass: 2 * most, waterVolume: 1, temperature, saturation });
        expect(made.dissolvedSalt).toBeCloseTo(most, 9);
      }),
      settings,
    );
  });

  it('reads on a salometer what it was made to', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (salometer) => {
        const { massFraction } = salometerBrine.compute({ salometer });
        expect(salometerReading.compute({ massFraction }).salometer).toBeCloseTo(salometer, 12);
      }),
      settings,
    );
  });
});
