import { describe, expect, it } from 'vitest';
import { bayesUpdate } from './bayes.ts';
import { poissonCdf, poissonQuantile, poissonShortfall } from './poisson.ts';
import { baseStock, smallestStock } from './stock.ts';

describe('Poisson demand', () => {
  it('adds up to all', () => {
    expect(poissonCdf(3, 60)).toBeCloseTo(1, 14);
  });

  it('the quantile is the first count that reaches the share', () => {
    for (const share of [0.01, 0.3, 0.75, 0.999]) {
      const count = poissonQuantile(4, share);
      expect(poissonCdf(4, count)).toBeGreaterThanOrEqual(share);
      if (count > 0) expect(poissonCdf(4, count - 1)).toBeLessThan(share);
    }
  });

  it('with no stock everything wanted is owed', () => {
    expect(poissonShortfall(2.5, 0)).toBeCloseTo(2.5, 12);
    expect(baseStock.compute({ leadTimeDemand: 2.5, stock: 0 }).fillRate).toBe(0);
  });

  it('one piece more leaves fewer owed by the chance of needing it', () => {
    for (const stock of [0, 1, 4, 9])
      expect(poissonShortfall(3, stock) - poissonShortfall(3, stock + 1)).toBeCloseTo(
        1 - poissonCdf(3, stock),
        12,
      );
  });

  it('the smallest stock fills the share, one less does not', () => {
    const stock = smallestStock(2, 0.95);
    expect(baseStock.compute({ leadTimeDemand: 2, stock }).fillRate).toBeGreaterThanOrEqual(0.95);
    expect(baseStock.compute({ leadTimeDemand: 2, stock: stock - 1 }).fillRate).toBeLessThan(0.95);
  });
});

describe('Bayes by one test', () => {
  it('a worthless test changes nothing', () => {
    const { posteriorPositive, posteriorNegative } = bayesUpdate.compute({
      prior: 0.3,
      sensitivity: 0.5,
      specificity: 0.5,
    });
    expect(posteriorPositive).toBeCloseTo(0.3, 15);
    expect(posteriorNegative).toBeCloseTo(0.3, 15);
  });

  it('a result that cannot occur leaves the prior', () => {
    const sure = bayesUpdate.compute({ prior: 0, sensitivity: 1, specificity: 1 });
    expect(sure.posteriorPositive).toBe(0);
  });
});
