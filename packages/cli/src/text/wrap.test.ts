import { describe, expect, it } from 'vitest';
import { wrap } from './wrap.ts';

describe('wrap', () => {
  it('breaks between words and hangs the rest', () => {
    expect(wrap('one two three', { width: 9, first: '- ', rest: '  ' })).toEqual(['- one two', '  three']);
  });

  it('keeps a figure and its unit together', () => {
    expect(wrap('set it to 5\u00a0gpm now', { width: 12 })).toEqual(['set it to', '5 gpm now']);
  });

  it('leaves a word that is too long whole', () => {
    expect(wrap('unbreakable', { width: 4 })).toEqual(['unbreakable']);
  });
});
