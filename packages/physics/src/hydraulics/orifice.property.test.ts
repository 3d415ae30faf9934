import fc from 'fast-check';
import { expect, it } from 'vitest';
import { jetPumpDrive, jetPumpNozzleFlow } from './jet-pump.ts';
import { orificeDiameter, orificeFlow } from './orifice.ts';
import { orificePlate } from './orifice-plate.ts';

const seeded = { numRuns: 100, seed: 20260713 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('hole → flow → hole comes back', () => {
  const hole = fc.record({
    pressureDrop: between(1e3, 1e6),
    dischargeCoefficient: between(0.5, 1),
    density: between(900, 1200),
  });
  fc.assert(
    fc.property(between(1e-4, 0.02), hole, (diameter, at) => {
      const { flow } = orificeFlow.compute({ ...at, diameter });
      expect(orificeDiameter.compute({ ...at, flow }).diameter / diameter).toBeCloseTo(1, 12);
    }),
    seeded,
  );
});

it('driving flow → pressure → driving flow comes back', () => {
  const pump = fc.record({
    nozzleArea: between(5e-7, 1e-5),
    areaRatio: between(0.05, 0.4),
    flowRatio: between(0, 1.5),
    densityRatio: between(0.9, 1.25),
    density: between(990, 1010),
    nozzleLoss: between(0, 0.3),
    suctionLoss: between(0, 0.3),
  });
  fc.assert(
    fc.property(pump, between(1e-6, 1e-4), (built, flow) => {
      const { pressureDrop } = jetPumpDrive.compute({ ...built, flow });
      fc.pre(pressureDrop > 0);
      expect(jetPumpNozzleFlow.compute({ ...built, pressureDrop }).flow / flow).toBeCloseTo(1, 10);
    }),
    seeded,
  );
});

it('a plate lets more through when the pressure drop grows', () => {
  const plate = { pipeDiameter: 0.08, diameter: 0.04, density: 999, viscosity: 1.1e-3, expansibility: 1 };
  fc.assert(
    fc.property(between(100, 2e5), (pressureDrop) => {
      const less = orificePlate.compute({ ...plate, pressureDrop }).flow;
      expect(orificePlate.compute({ ...plate, pressureDrop: pressureDrop * 1.01 }).flow).toBeGreaterThan(
        less,
      );
    }),
    seeded,
  );
});
