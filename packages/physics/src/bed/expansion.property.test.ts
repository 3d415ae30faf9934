import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bedExpansion, bedExpansionMethods, upflowForRise } from './bed-expansion.ts';
import { ergunWithConstants, spheres } from './ergun.ts';
import { upflowErgun } from './expansion-ergun.ts';
import { liftedBedLoss } from './pressure-loss.ts';
import { archimedesNumber, sphereDrag, terminalVelocity } from './terminal-velocity.ts';

const seeded = { numRuns: 100, seed: 20260713 };

const bed = fc.record({
  diameter: fc.double({ min: 3e-4, max: 2e-3, noNaN: true }),
  particleDensity: fc.double({ min: 1150, max: 4200, noNaN: true }),
  voidage: fc.double({ min: 0.3, max: 0.6, noNaN: true }),
  density: fc.double({ min: 960, max: 1060, noNaN: true }),
  viscosity: fc.double({ min: 3e-4, max: 2e-3, noNaN: true }),
});
const method = fc.constantFrom(...bedExpansionMethods);
const expansion = fc.double({ min: 0.01, max: 3, noNaN: true });

it('rate → expansion → rate comes back to where it began', () => {
  fc.assert(
    fc.property(bed, method, expansion, (grains, by, wanted) => {
      const superficialVelocity = upflowForRise({ ...grains, method: by, bedDepth: 1, rise: wanted });
      const lifted = bedExpansion({ ...grains, method: by, superficialVelocity });
      if (lifted.state !== 'lifted') throw new Error('should be lifted');
      expect(lifted.expansion / wanted).toBeCloseTo(1, 9);
    }),
    seeded,
  );
});

it('more flow never lowers the bed', () => {
  fc.assert(
    fc.property(bed, method, fc.double({ min: 1e-5, max: 0.05, noNaN: true }), (grains, by, rate) => {
      const less = bedExpansion({ ...grains, method: by, superficialVelocity: rate });
      const more = bedExpansion({ ...grains, method: by, superficialVelocity: rate * 1.1 });
      const height = (state: typeof less): number =>
        state.state === 'carried-off' ? Number.POSITIVE_INFINITY : state.expansion;
      expect(height(more)).toBeGreaterThanOrEqual(height(less));
    }),
    seeded,
  );
});

it('drag carries the weight at the sinking speed', () => {
  fc.assert(
    fc.property(bed, (grains) => {
      const { reynolds } = terminalVelocity.compute(grains);
      expect((0.75 * sphereDrag(reynolds) * reynolds ** 2) / archimedesNumber(grains)).toBeCloseTo(1, 9);
    }),
    seeded,
  );
});

it('sinks after Stokes when it is small enough', () => {
  const dust = { diameter: 1e-6, particleDensity: 1280, density: 998, viscosity: 1e-3 };
  const stokes =
    (9.80665 * (dust.particleDensity - dust.density) * dust.diameter ** 2) / (18 * dust.viscosity);
  expect(terminalVelocity.compute(dust).terminalVelocity / stokes).toBeCloseTo(1, 3);
});

it('at the rate that just lifts, the loss of the settled bed is its weight in water', () => {
  fc.assert(
    fc.property(bed, (grains) => {
      const { superficialVelocity } = upflowErgun.compute({ ...grains, ...spheres, expansion: 0 });
      const { pressureGradient } = ergunWithConstants.compute({ ...grains, ...spheres, superficialVelocity });
      const { pressureLoss } = liftedBedLoss.compute({ ...grains, bedDepth: 1 });
      expect(pressureGradient / pressureLoss).toBeCloseTo(1, 9);
    }),
    seeded,
  );
});
