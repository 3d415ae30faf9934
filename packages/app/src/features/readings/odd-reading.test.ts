import { expect, it } from 'vitest';
import type { QuantityAsk } from '../../engine/views/reading-ask.ts';
import { oddReading } from './odd-reading.ts';

const hardness: QuantityAsk = {
  kind: 'hardness',
  units: ['gpg', 'mg/L CaCO3'],
  spread: [],
  plausible: { min: 0, max: 41, text: '0 to 120 gpg' },
  byPail: false,
};

const entry = (figure: string, unit = 'gpg') => ({ figure, unit, known: 'value' }) as const;

it('a usual figure is not asked about, nor one that is no figure yet', () => {
  expect(oddReading(hardness, entry('18'))).toBeUndefined();
  expect(oddReading(hardness, entry(''))).toBeUndefined();
  expect(oddReading(hardness, entry('soft'))).toBeUndefined();
});

it('300 gpg was perhaps read in mg/L', () => {
  expect(oddReading(hardness, entry('300'))).toEqual({ usual: '0 to 120 gpg', unit: 'mg/L CaCO3' });
});

it('a figure that is odd in every unit is asked about without one', () => {
  expect(oddReading(hardness, entry('999999'))).toEqual({ usual: '0 to 120 gpg' });
});

it('nothing is odd where nobody said what is usual', () => {
  const { plausible: _, ...open } = hardness;
  expect(oddReading(open, entry('300'))).toBeUndefined();
});
