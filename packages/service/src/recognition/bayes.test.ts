import { describe, expect, it } from 'vitest';
import { posterior } from './bayes.ts';

describe('posterior', () => {
  it('gives decision example D5 (elementary): a shown test raises 0.3 to 0.658537, a clear one lowers it', () => {
    expect(posterior([0.3, 0.7], [[0.9, 0.2]])[0]).toBeCloseTo(0.658537, 5);
    expect(posterior([0.3, 0.7], [[0.1, 0.8]])[0]).toBeCloseTo(0.0508475, 5);
  });

  it('keeps its digits through a thousand answers', () => {
    const answers = Array.from({ length: 1000 }, () => [1e-3, 1e-3]);
    expect(posterior([0.25, 0.75], answers)[0]).toBeCloseTo(0.25, 12);
  });

  it('throws when nothing is left possible', () => {
    expect(() => posterior([0.5, 0.5], [[0, 0]])).toThrow('no-hypothesis-left');
  });
});
