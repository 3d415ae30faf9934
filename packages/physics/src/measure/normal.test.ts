import { describe, expect, it } from 'vitest';
import { erf, erfc } from './erf.ts';
import { normalCdf, normalQuantile } from './normal.ts';

/** Computed with mpmath 1.3.0 at 40 digits, rounded to the nearest number. */
const reference: readonly (readonly [x: number, erf: number, erfc: number])[] = [
  [1e-8, 1.1283791670955126e-8, 0.9999999887162083],
  [0.1, 0.1124629160182849, 0.887537083981715],
  [0.5, 0.5204998778130465, 0.4795001221869535],
  [1, 0.8427007929497149, 0.15729920705028513],
  [1.5, 0.9661051464753108, 0.033894853524689274],
  [2, 0.9953222650189527, 0.004677734981047266],
  [2.249999, 0.9985372762709838, 0.001462723729016245],
  [2.25, 0.9985372834133188, 0.0014627165866811518],
  [3, 0.9999779095030014, 2.209049699858544e-5],
  [4, 0.9999999845827421, 1.541725790028002e-8],
  [6, 1, 2.1519736712498913e-17],
  [10, 1, 2.088487583762545e-45],
  [20, 1, 5.395865611607901e-176],
];

/** Computed with mpmath 1.3.0 at 40 digits, rounded to the nearest number. */
const shares: readonly (readonly [z: number, share: number])[] = [
  [-10, 7.619853024160525e-24],
  [-6, 9.86587645037698e-10],
  [-1.645, 0.04998490553912136],
  [0, 0.5],
  [0.5, 0.6914624612740131],
  [1.645, 0.9500150944608786],
  [3, 0.9986501019683699],
];

describe('error function', () => {
  it('agrees with mpmath to 1e-15, its complement to twelve digits', () => {
    for (const [x, value, complement] of reference) {
      expect(Math.abs(erf(x) - value)).toBeLessThan(1e-15);
      expect(Math.abs(erfc(x) / complement - 1)).toBeLessThan(1e-12);
    }
  });

  it('is odd', () => {
    for (const [x] of reference) expect(erf(-x)).toBe(-erf(x));
  });
});

describe('normal distribution', () => {
  it('agrees with mpmath to twelve digits, far tails too', () => {
    for (const [z, share] of shares) expect(Math.abs(normalCdf(z) / share - 1)).toBeLessThan(1e-12);
  });

  it('quantile and share undo each other', () => {
    for (const share of [1e-12, 1e-3, 0.05, 0.4, 0.5, 0.75, 0.95, 0.9999])
      expect(Math.abs(normalCdf(normalQuantile(share)) / share - 1)).toBeLessThan(1e-12);
  });

  it('has no quantile for certainty', () => {
    expect(() => normalQuantile(1)).toThrow(RangeError);
    expect(() => normalQuantile(0)).toThrow(RangeError);
  });
});
