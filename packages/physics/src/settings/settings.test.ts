import { describe, expect, it } from 'vitest';
import { rinseTime } from '../regeneration/rinse.ts';
import { bedVolume, crossSection, upflowRate } from '../vessel/tank.ts';
import { bedDepth, expansionAtFreeHeight, flowForUpflow } from './bed-depth.ts';
import { airGapNeeded, costDifference, runningCost, yearlyDifference } from './cost.ts';
import { averageUse, bedVolumesThrough, brineStepTime, rinseLeft, useOverTime } from './times.ts';

describe('bed and upflow', () => {
  it('gives back the depth from which a volume was made', () => {
    const { volume } = bedVolume.compute({ diameter: 0.353, bedDepth: 0.8636 });
    expect(bedDepth.compute({ volume, diameter: 0.353 }).bedDepth).toBeCloseTo(0.8636, 12);
  });

  it('gives the flow whose upflow it was asked for', () => {
    const { area } = crossSection.compute({ diameter: 0.353 });
    const { flow } = flowForUpflow.compute({ superficialVelocity: 0.0034, area });
    expect(upflowRate.compute({ flow, diameter: 0.353 }).superficialVelocity).toBeCloseTo(0.0034, 12);
  });

  it('lets a bed rise by its free height less the margin, and not at all when the margin takes it', () => {
    // 20 in free, 2 in margin, 34 in deep: 18/34, by hand
    const expansion = expansionAtFreeHeight.compute({ freeHeight: 0.508, margin: 0.0508, bedDepth: 0.8636 });
    expect(expansion.expansion).toBeCloseTo(18 / 34, 12);
    expect(
      expansionAtFreeHeight.compute({ freeHeight: 0.04, margin: 0.0508, bedDepth: 0.8636 }).expansion,
    ).toBe(0);
  });
});

describe('times', () => {
  it('splits a brine step the way it was put together, and leaves no rinse when the draw outlasts it', () => {
    const { brineStepTime: step } = brineStepTime.compute({ drawTime: 1200, slowRinseTime: 1920 });
    expect(rinseLeft.compute({ brineStepTime: step, drawTime: 1200 }).slowRinseTime).toBe(1920);
    expect(rinseLeft.compute({ brineStepTime: step, drawTime: 4000 }).slowRinseTime).toBe(0);
  });

  it('counts the bed volumes that a rinse of so many bed volumes takes', () => {
    const flow = 5.36e-5;
    const time = rinseTime.compute({ bedVolumes: 1.5, resinVolume: 0.085, rinseFlow: flow }).rinseTime;
    const through = bedVolumesThrough.compute({ rinseFlow: flow, rinseTime: time, resinVolume: 0.085 });
    expect(through.bedVolumes).toBeCloseTo(1.5, 12);
  });

  it('uses in a day what a day uses', () => {
    const { averageUse: flow } = averageUse.compute({ dailyUse: 2.65 });
    expect(flow * 86_400).toBeCloseTo(2.65, 12);
    expect(useOverTime.compute({ dailyUse: 2.65, serviceTime: 86_400 }).serviceVolume).toBeCloseTo(2.65, 12);
  });
});

describe('cost and air gap', () => {
  it('adds salt, water and sewer, and takes what is advised from what was found', () => {
    const cost = runningCost.compute({
      saltPerYear: 1000,
      waterPerYear: 50,
      saltPrice: 0.4,
      waterPrice: 2.4,
      sewerPrice: 3,
    });
    expect(cost.costPerYear).toBeCloseTo(1000 * 0.4 + 50 * 5.4, 9);
    const more = yearlyDifference.compute({ foundSalt: 9, advisedSalt: 6, foundWater: 4, advisedWater: 5 });
    expect(more).toEqual({ saltDifference: 3, waterDifference: -1 });
    expect(costDifference.compute({ foundCost: 9, advisedCost: 5 }).costDifference).toBe(4);
  });

  it('keeps two pipe diameters of air, and an inch at least', () => {
    expect(airGapNeeded.compute({ pipeDiameter: 0.01905 }).airGap).toBeCloseTo(0.0381, 12);
    expect(airGapNeeded.compute({ pipeDiameter: 0.006 }).airGap).toBe(0.0254);
  });
});
