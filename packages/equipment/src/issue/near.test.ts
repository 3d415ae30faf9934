import { expect, test } from 'vitest';
import { editDistance, nearest } from './near.ts';

test('a swap of neighbours counts as one slip', () => {
  expect(editDistance('tells', 'tlels')).toBe(1);
  expect(editDistance('kitten', 'sitting')).toBe(3);
  expect(editDistance('', 'abc')).toBe(3);
});

test('only a word close enough is offered', () => {
  expect(nearest('tels', ['tells', 'tests'])).toBe('tells');
  expect(nearest('bore', ['tells', 'tests'])).toBeUndefined();
});
