import { describe, expect, it } from 'vitest';
import { type Claim, judge } from './row.ts';

const claim: Claim = {
  id: 'a',
  title: 'a',
  source: 'somebody else',
  mark: 'seen',
  computed: 100.5,
  expected: 100,
  tolerance: { rel: 0.01 },
};

describe('comparing a computed with a published value', () => {
  it('passes within the tolerance and tells the difference', () => {
    expect(judge(claim)).toMatchObject({ verdict: 'pass', difference: 0.5 });
  });

  it('fails when the computed value is broken', () => {
    expect(judge({ ...claim, computed: 102 }).verdict).toBe('fail');
    expect(judge({ ...claim, computed: Number.NaN }).verdict).toBe('fail');
    expect(judge({ ...claim, computed: 100.5, tolerance: { abs: 0.4 } }).verdict).toBe('fail');
  });

  it('takes a value that sits on its tolerance', () => {
    expect(judge({ ...claim, computed: 0.3, expected: 0.1, tolerance: { abs: 0.2 } }).verdict).toBe('pass');
  });

  it('compares words exactly', () => {
    expect(judge({ ...claim, computed: 'hard', expected: 'hard' }).verdict).toBe('pass');
    expect(judge({ ...claim, computed: 'hard', expected: 'Hard' }).verdict).toBe('fail');
  });

  it('shows a value from memory without counting it, right or wrong', () => {
    expect(judge({ ...claim, mark: 'memory, exact by definition' }).verdict).toBe('shown');
    expect(judge({ ...claim, computed: 7, notCounted: 'secondary' }).verdict).toBe('shown');
  });
});
