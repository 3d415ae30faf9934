import { expect, it } from 'vitest';
import { textOf } from './text-of.ts';

it('joins figure and unit, with a point for a decimal comma, and leaves an empty field out', () => {
  expect([textOf('19', 'gpg'), textOf(' 0,5 ', 'gpm'), textOf(' ', 'gal')]).toEqual([
    '19 gpg',
    '0.5 gpm',
    undefined,
  ]);
});
