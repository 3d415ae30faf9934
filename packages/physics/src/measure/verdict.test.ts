import { describe, expect, it } from 'vitest';
import { acceptanceLimit, rejectionLimit } from './conformance.ts';
import { judge, repeatsToDecide } from './verdict.ts';

describe('verdict of a measurement', () => {
  it('passes, fails or leaves open by how far the reading stands from the limit', () => {
    expect(judge({ estimate: 10, u: 2, upper: 17.1 }).verdict).toBe('pass');
    expect(judge({ estimate: 24, u: 2, upper: 17.1 }).verdict).toBe('fail');
    expect(judge({ estimate: 16, u: 2, upper: 17.1 }).verdict).toBe('not-decided');
    expect(judge({ estimate: 5.2, u: 0.05, lower: 5 }).verdict).toBe('pass');
    expect(judge({ estimate: 7.5, u: 0.5, lower: 5, upper: 10 }).verdict).toBe('pass');
  });

  it('says which uncertainty would decide the same reading', () => {
    const open = judge({ estimate: 16, u: 2, upper: 17.1 });
    if (open.verdict !== 'not-decided') throw new Error('should be open');
    expect(open.wouldDecide).toBeCloseTo(1.1 / 1.6448536269514722, 9);
  });

  it('has no such uncertainty for a reading on the limit itself', () => {
    expect(judge({ estimate: 17.1, u: 2, upper: 17.1 })).toEqual({ verdict: 'not-decided', pConform: 0.5 });
  });

  it('does not let a band too narrow for the instrument pass', () => {
    const narrow = judge({ estimate: 7.5, u: 3, lower: 7, upper: 8 });
    expect(narrow).toMatchObject({ verdict: 'not-decided' });
  });

  it('agrees with the guarded limits', () => {
    const limit = acceptanceLimit('upper', { limit: 17.1, u: 2 });
    expect(judge({ estimate: limit - 1e-9, u: 2, upper: 17.1 }).verdict).toBe('pass');
    expect(judge({ estimate: limit + 1e-6, u: 2, upper: 17.1 }).verdict).toBe('not-decided');
    const reject = rejectionLimit('lower', { limit: 5, u: 0.1 });
    expect(judge({ estimate: reject - 1e-9, u: 0.1, lower: 5 }).verdict).toBe('fail');
    expect(judge({ estimate: reject + 1e-6, u: 0.1, lower: 5 }).verdict).toBe('not-decided');
  });

  it('refuses limits that cross and a risk of a coin', () => {
    expect(() => judge({ estimate: 1, u: 1, lower: 3, upper: 2 })).toThrow(/cross/);
    expect(() => judge({ estimate: 1, u: 1, upper: 2, risk: 0.5 })).toThrow(/risk/);
  });
});

describe('repeats that would decide', () => {
  it('shrink only what differs from reading to reading', () => {
    expect(repeatsToDecide({ needed: 0.5, eachReading: 1, common: 0 })).toBe(4);
    expect(repeatsToDecide({ needed: 0.5, eachReading: 1, common: 0.3 })).toBe(7);
    expect(repeatsToDecide({ needed: 0.5, eachReading: 1, common: 0.5 })).toBeUndefined();
    expect(repeatsToDecide({ needed: 5, eachReading: 1, common: 0 })).toBe(1);
  });
});
