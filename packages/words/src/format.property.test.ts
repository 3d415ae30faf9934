import { isQuantityKind, kinds, parseQuantity, quantity, unitsByKind } from '@brinewright/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatMessage } from './format.ts';
import { quantityProblemMessages } from './format-problem.ts';
import { formatQuantity } from './format-quantity.ts';

const runs = { numRuns: 100, seed: 1803 } as const;
const kind = fc.constantFrom(...Object.keys(kinds).filter(isQuantityKind));
const system = fc.constantFrom('us', 'metric');
const language = fc.constantFrom('en', 'es');

describe('formatting', () => {
  test('with enough digits every unit reads back what it shows, to 1e-12', () => {
    for (const unit of [...unitsByKind.values()].flat()) {
      fc.assert(
        fc.property(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (si) => {
          const format = { system: 'us', language: 'en', unit: unit.symbol, digits: 21 } as const;
          const { text } = formatQuantity(quantity(unit.kind, si), format);
          const parsed = parseQuantity(text, unit.kind);
          const error = parsed.ok ? Math.abs(parsed.quantity.si - si) : Number.NaN;
          expect(error).toBeLessThanOrEqual(1e-12 * Math.max(si, unit.offset));
          expect(parsed.ok && parsed.quantity.as).toBe(text);
        }),
        { ...runs, numRuns: 5 },
      );
    }
  });

  test('by default it keeps three digits, without idle zeros', () => {
    fc.assert(
      fc.property(kind, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), system, (of, si, units) => {
        const { figure, text } = formatQuantity(quantity(of, si), { system: units, language: 'en' });
        const parsed = parseQuantity(text, of);
        const offset = of === 'temperature' ? 300 : 0;
        if (of !== 'money') {
          expect(parsed.ok && Math.abs(parsed.quantity.si - si)).toBeLessThanOrEqual(
            5.001e-3 * (si + offset),
          );
          expect(figure).not.toMatch(/\.\d*0$|\.$/);
        }
      }),
      runs,
    );
  });

  test('every problem can be told in both languages', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), kind, language, (text, of, spoken) => {
        const parsed = parseQuantity(text, of);
        if (parsed.ok) return;
        const { message, mend } = quantityProblemMessages(parsed.problem);
        for (const part of [message, mend]) {
          expect(formatMessage(part, { language: spoken, system: 'us' })).toMatch(/\S/);
        }
      }),
      runs,
    );
  });
});
