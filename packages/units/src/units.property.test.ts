import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inUnit } from './convert.ts';
import { isQuantityKind, kinds } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';
import { parseRange } from './parse-range.ts';
import { quantity } from './quantity.ts';
import { unitTable } from './table.ts';
import { writeQuantity } from './written-quantity.ts';

const runs = { numRuns: 100, seed: 1802 } as const;
const kind = fc.constantFrom(...Object.keys(kinds).filter(isQuantityKind));
const row = fc.constantFrom(...unitTable);
const figure = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

/** Pieces that real entries and mistyped ones are made of. */
const hostile = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .array(
      fc.constantFrom(
        '1',
        '0',
        ',',
        '.',
        '/',
        '-',
        '−',
        'e',
        '½',
        ' ',
        '\u00a0',
        'gpm',
        'ft',
        "'",
        '"',
        '°',
        'per',
        'to',
        'by',
        '$',
        '%',
        'µ',
        '__proto__',
        'constructor',
      ),
      { maxLength: 14 },
    )
    .map((parts) => parts.join('')),
);

describe('units', () => {
  test('every unit reads back what is written in it', () => {
    for (const unit of unitTable) {
      fc.assert(
        fc.property(figure, (si) => {
          const text = `${inUnit(si, unit)} ${unit.symbol}`.trim();
          const parsed = parseQuantity(text, unit.kind);
          expect(parsed.ok && parsed.quantity.as).toBe(text);
          expect(parsed.ok && Math.abs(parsed.quantity.si / si - 1)).toBeLessThan(
            unit.offset === 0 ? 1e-12 : 1e-12 * (1 + unit.offset / si),
          );
        }),
        { ...runs, numRuns: 10 },
      );
    }
  });

  test('every unit as printed, and in capitals, is the same unit', () => {
    fc.assert(
      fc.property(row, fc.integer({ min: 1, max: 999 }), (unit, value) => {
        const plain = parseQuantity(`${value} ${unit.symbol}`, unit.kind);
        const printed = parseQuantity(`${value} ${unit.shown}`, unit.kind);
        const shouted = parseQuantity(`${value} ${unit.symbol.toUpperCase()}`, unit.kind);
        expect(printed.ok && plain.ok && printed.quantity.si === plain.quantity.si).toBe(true);
        expect(shouted.ok && plain.ok && shouted.quantity.si === plain.quantity.si).toBe(true);
      }),
      runs,
    );
  });

  test('written and read again, a computed value is the same to the last bit', () => {
    fc.assert(
      fc.property(kind, fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }), (of, si) => {
        const parsed = parseQuantity(writeQuantity(quantity(of, si)), of);
        expect(parsed.ok && parsed.quantity.si).toBe(si === 0 ? 0 : si);
      }),
      runs,
    );
  });

  test('no text makes the reader throw or give a value that is not a number', () => {
    fc.assert(
      fc.property(hostile, kind, (text, of) => {
        const parsed = parseQuantity(text, of);
        if (parsed.ok) expect(Number.isFinite(parsed.quantity.si) && parsed.quantity.si >= 0).toBe(true);
        else expect(parsed.problem.kind).toBe(of);
        expect(typeof parseRange(text, of).ok).toBe('boolean');
      }),
      { ...runs, numRuns: 2000 },
    );
  });

  test('what a mend proposes can be read', () => {
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(99), row, (whole, part, unit) => {
        const parsed = parseQuantity(`${whole},${String(part).padStart(2, '0')} ${unit.symbol}`, unit.kind);
        expect(parsed.ok ? '' : parsed.problem.what).toBe('decimal-comma');
        if (!parsed.ok && parsed.problem.what === 'decimal-comma') {
          expect(parseQuantity(parsed.problem.mended, unit.kind).ok).toBe(true);
        }
      }),
      runs,
    );
  });
});
