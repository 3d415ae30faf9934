import { quantity } from '@brinewright/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { downTo, nearest, neighboursOf, upward } from './rounding.ts';

const minutes = (min: number, max: number, by: number) => ({
  min: quantity('time', min * 60),
  max: quantity('time', max * 60),
  by: quantity('time', by * 60),
});

describe('the times that a controller can hold', () => {
  it('stand on both sides of an exact one', () => {
    expect(neighboursOf(16.05 * 60, minutes(1, 99, 1))).toEqual({
      below: 960,
      above: 1020,
      beyond: false,
      short: false,
    });
  });

  it('are the same on both sides where the exact time can be held', () => {
    const neighbours = neighboursOf(600, minutes(2, 80, 2));
    expect(neighbours.below).toBe(600);
    expect(upward(600, neighbours)).toBe(600);
    expect(nearest(600, neighbours)).toBe(600);
  });

  it('end at the range, and say when the exact time lies beyond it', () => {
    const last = { below: 79 * 60, above: 79 * 60, beyond: true, short: false };
    expect(neighboursOf(6000, minutes(1, 80, 3))).toEqual(last);
    expect(neighboursOf(10, minutes(2, 80, 2))).toEqual({
      below: 120,
      above: 120,
      beyond: false,
      short: true,
    });
  });

  it('bracket any exact time within the range, one step apart at most', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        fc.integer({ min: 1, max: 10 }),
        fc.integer({ min: 1, max: 6 }),
        (exact, min, by) => {
          const times = minutes(min, min + by * 20, by);
          const { below, above, beyond } = neighboursOf(exact * 60, times);
          expect(above - below).toBeLessThanOrEqual(by * 60);
          expect((below - times.min.si) % (by * 60)).toBeCloseTo(0, 6);
          if (!beyond && exact >= min) {
            expect(below).toBeLessThanOrEqual(exact * 60 + 1e-6);
            expect(above).toBeGreaterThanOrEqual(exact * 60 - 1e-6);
          }
        },
      ),
      { numRuns: 100, seed: 20261125 },
    );
  });

  it('go down to whole steps for volumes, without losing one to the last bit', () => {
    expect(downTo(2808, 20)).toBe(2800);
    expect(downTo(0.3, 0.1)).toBeCloseTo(0.3, 12);
  });
});
