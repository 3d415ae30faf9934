import { describe, expect, it } from 'vitest';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import { complaintsOf } from './heard.ts';

const heard = (words: string) => complaintsOf({ ...situationOf().visit, complaint: { words } }, tinyFamily());

describe('a word of a complaint', () => {
  it('is heard where it begins a word, also after a place where it does not', () => {
    expect(heard('The shard broke, and the water is hard.')).toEqual(['hard-water']);
    expect(heard('Sheer orchard.')).toEqual([]);
  });
});
