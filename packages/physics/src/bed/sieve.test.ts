import { expect, it } from 'vitest';
import { sieveAnalysis } from './sieve.ts';

it('leaves the effective size out when the sieves do not reach so far down', () => {
  const coarse = sieveAnalysis(
    [
      { opening: 2e-3, retained: 10 },
      { opening: 1e-3, retained: 30 },
    ],
    60,
  );
  expect(coarse.d10).toBeUndefined();
  expect(coarse.d60).toBeCloseTo(1e-3, 12);
  expect(coarse.uniformity).toBeUndefined();
});

it('counts what fell into the pan', () => {
  const { curve } = sieveAnalysis([{ opening: 1e-3, retained: 75 }], 25);
  expect(curve).toEqual([{ opening: 1e-3, passing: 0.25 }]);
});

it('throws on sieves that are not stacked from wide to fine', () => {
  expect(() =>
    sieveAnalysis([
      { opening: 1e-3, retained: 1 },
      { opening: 2e-3, retained: 1 },
    ]),
  ).toThrow(/openings must fall/);
});
