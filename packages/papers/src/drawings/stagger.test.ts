import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rowsOf, spreadDown } from './stagger.ts';

const label = fc.record({
  at: fc.double({ min: 0, max: 600, noNaN: true }),
  size: fc.double({ min: 5, max: 150, noNaN: true }),
});

test('labels in one row never overlap and never leave the width', () => {
  fc.assert(
    fc.property(fc.array(label, { maxLength: 12 }), (labels) => {
      const placed = rowsOf(labels, 600).map(({ at, row }, index) => {
        const half = (labels[index]?.size ?? 0) / 2;
        return { row, from: at - half, to: at + half };
      });
      expect(placed.every(({ from, to }) => from >= -1e-9 && to <= 600 + 1e-9)).toBe(true);
      for (const [index, one] of placed.entries())
        for (const other of placed.slice(index + 1))
          if (one.row === other.row) expect(one.to <= other.from || other.to <= one.from).toBe(true);
    }),
    { numRuns: 100, seed: 7 },
  );
});

test('labels down a column keep their order and never overlap', () => {
  fc.assert(
    fc.property(fc.array(label, { minLength: 2, maxLength: 12 }), (labels) => {
      const tops = spreadDown(labels);
      for (const [index, top] of tops.entries()) {
        const next = tops[index + 1];
        if (next !== undefined) expect(next).toBeGreaterThanOrEqual(top + (labels[index]?.size ?? 0));
      }
    }),
    { numRuns: 100, seed: 7 },
  );
});
