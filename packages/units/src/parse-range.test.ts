import { describe, expect, test } from 'vitest';
import { toUnit } from './convert.ts';
import type { QuantityKind } from './kinds.ts';
import { parseRange } from './parse-range.ts';

const figures = (text: string, kind: QuantityKind, symbol: string): readonly number[] => {
  const parsed = parseRange(text, kind);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem.what}`);
  const { min, max, by } = parsed.range;
  return [min, max, ...(by === undefined ? [] : [by])].map((q) => toUnit(q, symbol));
};

describe('reading a range', () => {
  test.each<[string, QuantityKind, string, readonly number[]]>([
    ['20 psi to 125 psi', 'pressure', 'psi', [20, 125]],
    ['20 to 125 psi', 'pressure', 'psi', [20, 125]],
    ['6 in to 9 in', 'length', 'in', [6, 9]],
    ['1 min to 99 min by 1 min', 'time', 'min', [1, 99, 1]],
    ['1 to 99 min by 1', 'time', 'min', [1, 99, 1]],
    ['30 s to 5 min by 30 s', 'time', 's', [30, 300, 30]],
    ['-5 °C to 40 °C', 'temperature', 'degC', [-5, 40]],
    ['2 to 8', 'count', '', [2, 8]],
  ])('%s', (text, kind, symbol, expected) => {
    const read = figures(text, kind, symbol);
    expect(read).toHaveLength(expected.length);
    read.forEach((value, place) => {
      expect(value).toBeCloseTo(expected[place] ?? Number.NaN, 9);
    });
  });

  test.each<[string, QuantityKind, string]>([
    ['20 psi', 'pressure', 'not-a-range'],
    ['', 'pressure', 'not-a-range'],
    ['1 psi to 2 psi to 3 psi', 'pressure', 'not-a-range'],
    ['20 psi to 125', 'pressure', 'missing-unit'],
    ['x to 125 psi', 'pressure', 'no-number'],
    ['1 min to 2 gal', 'time', 'wrong-kind'],
    ['1 min to 9 min by 0 min', 'time', 'zero-step'],
    ['125 psi to 20 psi', 'pressure', 'range-upside-down'],
  ])('%s as %s is refused: %s', (text, kind, what) => {
    const parsed = parseRange(text, kind);
    expect(parsed.ok ? parsed.range : parsed.problem.what).toBe(what);
  });

  test('a range that runs backwards comes back turned round', () => {
    expect(parseRange('125 to 20 psi', 'pressure')).toMatchObject({
      problem: { mended: '20 psi to 125 psi' },
    });
  });

  test('the ends keep their text', () => {
    expect(parseRange('20 psi to 125 psi', 'pressure')).toMatchObject({
      range: { min: { as: '20 psi' }, max: { as: '125 psi' } },
    });
  });
});
