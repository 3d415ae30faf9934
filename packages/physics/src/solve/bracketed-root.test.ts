import { expect, it } from 'vitest';
import { bracketedRoot } from './bracketed-root.ts';

it('closes in to neighbouring numbers, whichever way the curve runs', () => {
  expect(bracketedRoot((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
  expect(bracketedRoot((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
});

it('takes an end that is a root', () => {
  expect(bracketedRoot((x) => x, 0, 1)).toBe(0);
  expect(bracketedRoot((x) => x - 1, 0, 1)).toBe(1);
});

it('throws where the ends have one sign, or none', () => {
  expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow(RangeError);
  expect(() => bracketedRoot(() => Number.NaN, -1, 1)).toThrow(RangeError);
});
