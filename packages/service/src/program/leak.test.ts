import { expect, test } from 'vitest';
import { laundry, programmed } from '../testing/laundry.ts';

const yearOf = (value: string) =>
  programmed(
    laundry({
      readings: [{ test: 'drain-in-service', value }],
      settings: {
        found: {
          backwash: '10 min',
          brine: '60 min',
          'fast-rinse': '10 min',
          refill: '16 min',
          volume: '2000 gal',
        },
      },
    }),
  );

/* By hand: 0.2 gpm × 1440 min = 288 gal a day, × 365.25 = 105,192 gal a year. */
test('a leak runs on top of what the found regenerations send to the drain in a year', () => {
  const { notes, read } = yearOf('0.2 gpm');
  expect(notes.some((key) => key.startsWith('program.leak'))).toBe(true);
  expect(read('program.leak.day', 'gal')).toBeCloseTo(288, 6);
  expect(
    read('program.found.water-year', 'gal') - read('program.found.regeneration-year', 'gal'),
  ).toBeCloseTo(105_192, 3);
});

test('a drip that no pail can hold is no leak', () => {
  expect(yearOf('0.02 gpm').notes.some((key) => key.startsWith('program.leak'))).toBe(false);
});
