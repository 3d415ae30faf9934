import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendPast } from './blending.ts';
import { dilutedBrine } from './draw.ts';
import { batchExchange } from './exchange-equilibrium.ts';
import { exchangeNeeded, volumeBetween } from './interval.ts';
import { refillTime, refillWater, saltFromRefill } from './refill.ts';

const settings = { numRuns: 100, seed: 20_260_102 };
const positive = (max: number) => fc.double({ min: max * 1e-3, max, noNaN: true });

describe('regeneration arithmetic', () => {
  it('gives back the salt that the refill time was reckoned from', () => {
    fc.assert(
      fc.property(positive(50), positive(400), positive(1e-3), (saltMass, saltPerWater, refillFlow) => {
        const water = refillWater.compute({ saltMass, saltPerWater });
        const time = refillTime.compute({ ...water, refillFlow });
        const back = saltFromRefill.compute({ ...time, refillFlow, saltPerWater });
        expect(back.saltMass / saltMass).toBeCloseTo(1, 12);
      }),
      settings,
    );
  });

  it('softens in the volume between regenerations just what the bed holds', () => {
    fc.assert(
      fc.property(positive(500), positive(20), (exchange, hardness) => {
        const { serviceVolume } = volumeBetween.compute({ exchange, hardness, remainingHardness: 0 });
        const back = exchangeNeeded.compute({ serviceVolume, hardness, remainingHardness: 0 });
        expect(back.exchange / exchange).toBeCloseTo(1, 12);
      }),
      settings,
    );
  });

  it('dilutes brine to something between water and brine', () => {
    fc.assert(
      fc.property(positive(0.26), positive(1e-3), positive(1e-3), (massFraction, drawFlow, motiveFlow) => {
        const { dilutedMassFraction } = dilutedBrine.compute({
          massFraction,
          drawFlow,
          motiveFlow,
          brineDensity: 1200,
          waterDensity: 1000,
        });
        expect(dilutedMassFraction).toBeGreaterThan(0);
        expect(dilutedMassFraction).toBeLessThan(massFraction);
      }),
      settings,
    );
  });

  it('blends raw and soft water to the hardness wanted', () => {
    fc.assert(
      fc.property(positive(20), fc.double({ min: 0, max: 1, noNaN: true }), (hardness, share) => {
        const leakage = 0.01 * hardness;
        const wantedHardness = leakage + share * (hardness - leakage);
        const { blendFraction } = blendPast.compute({ hardness, wantedHardness, leakage, totalFlow: 1e-4 });
        expect(blendFraction * hardness + (1 - blendFraction) * leakage).toBeCloseTo(wantedHardness, 9);
      }),
      settings,
    );
  });

  it('leaves a batch in the ratio of its selectivity', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        positive(5),
        positive(5),
        (selectivity, dissolvedIon, dissolvedCounterIon) => {
          const exchange = 20;
          const { remainingIon: x } = batchExchange.compute({
            exchange,
            dissolvedIon,
            dissolvedCounterIon,
            selectivity,
          });
          const onResin = dissolvedIon - x;
          const ratio = (onResin * (dissolvedCounterIon + onResin)) / ((exchange - onResin) * x);
          expect(ratio / selectivity).toBeCloseTo(1, 9);
        },
      ),
      settings,
    );
  });
});
