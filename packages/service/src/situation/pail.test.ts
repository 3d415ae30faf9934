import { fromUnit, quantity, toUnit } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { takenTogether, timedPail } from './pail.ts';

describe('a pail and a watch', () => {
  it('give the flow with its uncertainty: a quart in 75 s is 0.2 gpm', () => {
    // By hand: 0.25 gal / 1.25 min = 0.2 gpm; mark 3 % / √3 = 1.732 %, watch 0.5/75 = 0.667 %; together 1.856 %.
    const { flow } = timedPail(fromUnit(0.25, 'gal', 'volume'), quantity('time', 75));
    if (flow === undefined) throw new Error('no flow');
    expect(toUnit(flow.quantity, 'gpm')).toBeCloseTo(0.2, 9);
    expect(flow.u / flow.quantity.si).toBeCloseTo(0.01856, 5);
  });

  it('doubt a short time more: the watch then weighs most', () => {
    const share = (seconds: number) => {
      const { flow } = timedPail(fromUnit(1, 'gal', 'volume'), quantity('time', seconds));
      return (flow?.u ?? Number.NaN) / (flow?.quantity.si ?? Number.NaN);
    };
    expect(share(5)).toBeGreaterThan(4 * share(60));
  });

  it('give nothing for no time or no water', () => {
    expect(timedPail(fromUnit(1, 'gal', 'volume'), quantity('time', 0)).flow).toBeUndefined();
    expect(timedPail(fromUnit(0, 'gal', 'volume'), quantity('time', 10)).flow).toBeUndefined();
  });

  it('are taken together as every stage takes repeats', () => {
    expect(takenTogether([], 1)).toBeUndefined();
    expect(takenTogether([61.8, 71, 62.1], 0.3)).toMatchObject({ median: 62.1, wild: [1] });
  });
});
