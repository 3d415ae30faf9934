import fc from 'fast-check';
import { expect, it } from 'vitest';
import { conformanceProbability } from './conformance.ts';
import { judge } from './verdict.ts';

const seeded = { numRuns: 100, seed: 20260713 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const rank = { fail: 0, 'not-decided': 1, pass: 2 } as const;

it('a better reading never gets a worse verdict', () => {
  fc.assert(
    fc.property(between(-10, 10), between(0.01, 5), between(0, 3), (estimate, u, step) => {
      const worse = judge({ estimate: estimate + step, u, upper: 0 });
      const better = judge({ estimate, u, upper: 0 });
      expect(rank[better.verdict]).toBeGreaterThanOrEqual(rank[worse.verdict]);
    }),
    seeded,
  );
});

it('a finer instrument never unsettles a verdict at one limit', () => {
  fc.assert(
    fc.property(between(-10, 10), between(0.01, 5), between(0.1, 1), (estimate, u, finer) => {
      const before = judge({ estimate, u, lower: 0 });
      const after = judge({ estimate, u: u * finer, lower: 0 });
      if (before.verdict !== 'not-decided') expect(after.verdict).toBe(before.verdict);
      const certainty = (p: number): number => Math.abs(p - 0.5);
      expect(certainty(after.pConform)).toBeGreaterThanOrEqual(certainty(before.pConform));
    }),
    seeded,
  );
});

it('the uncertainty it names does decide, and a little more does not', () => {
  const limits = fc.record({ lower: between(-5, -0.5), upper: between(0.5, 5) });
  fc.assert(
    fc.property(between(-8, 8), between(0.05, 8), limits, (estimate, u, band) => {
      const open = judge({ estimate, u, ...band });
      if (open.verdict !== 'not-decided' || open.wouldDecide === undefined) return;
      expect(open.wouldDecide).toBeLessThan(u);
      expect(judge({ estimate, u: open.wouldDecide * (1 - 1e-9), ...band }).verdict).not.toBe('not-decided');
      expect(judge({ estimate, u: open.wouldDecide * (1 + 1e-6), ...band }).verdict).toBe('not-decided');
    }),
    seeded,
  );
});

it('two-sided conformance is what both one-sided ones leave', () => {
  fc.assert(
    fc.property(between(-8, 8), between(0.05, 8), (estimate, u) => {
      const over = conformanceProbability({ estimate, u, lower: -1 });
      const under = conformanceProbability({ estimate, u, upper: 2 });
      expect(conformanceProbability({ estimate, u, lower: -1, upper: 2 })).toBeCloseTo(over + under - 1, 12);
    }),
    seeded,
  );
});
