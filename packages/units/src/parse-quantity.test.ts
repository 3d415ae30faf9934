import { describe, expect, test } from 'vitest';
import { toUnit } from './convert.ts';
import type { QuantityKind } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';
import type { QuantityProblem } from './problem.ts';

const figure = (text: string, kind: QuantityKind, symbol: string): number => {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.problem.what}`);
  return toUnit(parsed.quantity, symbol);
};

const problem = (text: string, kind: QuantityKind): QuantityProblem => {
  const parsed = parseQuantity(text, kind);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.quantity.si}`);
  return parsed.problem;
};

describe('reading a quantity', () => {
  test.each<[string, QuantityKind, string, number]>([
    ['18 gpg', 'hardness', 'gpg', 18],
    ['18gpg', 'hardness', 'gpg', 18],
    ['1,200 gal', 'volume', 'gal', 1200],
    ['1,234,567.5 gal', 'volume', 'gal', 1234567.5],
    ['.5 gpm', 'flow', 'gpm', 0.5],
    ['5. gpm', 'flow', 'gpm', 5],
    ['1e-3 m3/s', 'flow', 'L/s', 1],
    ['5 eq/L', 'capacity', 'eq/L', 5],
    ['3/4 in', 'length', 'in', 0.75],
    ['1 1/2 in', 'length', 'in', 1.5],
    ['1-1/2 in.', 'length', 'in', 1.5],
    ['1½ in', 'length', 'in', 1.5],
    ['¾"', 'length', 'in', 0.75],
    ['5\' 6"', 'length', 'in', 66],
    ['5′-6 1/2″', 'length', 'in', 66.5],
    ['5 ft 6 in', 'length', 'in', 66],
    ['1 h 30 min', 'time', 'min', 90],
    ['3 lb 4 oz', 'mass', 'oz', 52],
    ['60 °F', 'temperature', 'degF', 60],
    ['60 degF', 'temperature', 'degF', 60],
    ['60F', 'temperature', 'degF', 60],
    ['-5 °C', 'temperature', 'degC', -5],
    ['−5 °C', 'temperature', 'degC', -5],
    ['50 us gal', 'volume', 'gal', 50],
    ['3 cu. ft.', 'volume', 'ft3', 3],
    ['3 ft^3', 'volume', 'ft3', 3],
    ['3 ft³', 'volume', 'ft3', 3],
    ['10 lb per cubic foot', 'salt-dose', 'lb/ft3', 10],
    ['5 gpm per sq ft', 'superficial-velocity', 'gpm/ft2', 5],
    ['620 µS/cm', 'conductivity', 'uS/cm', 620],
    ['620 uS/cm', 'conductivity', 'uS/cm', 620],
    ['300 PPM', 'hardness', 'mg/L CaCO3', 300],
    ['300 MG/L', 'hardness', 'mg/L CaCO3', 300],
    ['300 mg/l as CaCO₃', 'hardness', 'mg/L CaCO3', 300],
    ['7.50 per 40 lb', 'price-mass', 'per lb', 0.1875],
    ['$7.50/40 lb', 'price-mass', 'per lb', 0.1875],
    ['9 per 1,000 gal', 'price-volume', 'per 1000 gal', 9],
    ['9 per kgal', 'price-volume', 'per 1000 gal', 9],
    ['95 per h', 'price-time', 'per h', 95],
    ['7', 'count', '', 7],
    ['0.38', 'ratio', '', 0.38],
    ['50 %', 'ratio', '', 0.5],
    ['50%', 'share', '%', 50],
    ['$84', 'money', '', 84],
    ['7.4', 'ph', '', 7.4],
    ['0.05 gal/pulse', 'volume-per-pulse', 'gal', 0.05],
    ['1.5 BV', 'bed-volumes', 'BV', 1.5],
    ['90 °S', 'salometer', 'degSal', 90],
  ])('%s as %s', (text, kind, symbol, expected) => {
    expect(figure(text, kind, symbol)).toBeCloseTo(expected, 9);
  });

  test('the text stays as entered, without the spaces around it', () => {
    const parsed = parseQuantity('  18 gpg ', 'hardness');
    expect(parsed.ok && parsed.quantity.as).toBe('18 gpg');
  });

  test.each<[string, QuantityKind, QuantityProblem['what']]>([
    ['', 'flow', 'no-number'],
    ['gpm', 'flow', 'no-number'],
    ['about 5 gpm', 'flow', 'no-number'],
    ['1.2.3 gpm', 'flow', 'no-number'],
    ['1,2,3 gpm', 'flow', 'no-number'],
    ['5', 'flow', 'missing-unit'],
    ['7.50', 'price-mass', 'missing-unit'],
    ['50', 'share', 'missing-unit'],
    ['5 gpn', 'flow', 'unknown-unit'],
    ['5 ft 6 ft', 'length', 'unknown-unit'],
    ['5 gal', 'flow', 'wrong-kind'],
    ['5 gpm', 'count', 'wrong-kind'],
    ['1,5 gpm', 'flow', 'decimal-comma'],
    ['1/0 in', 'length', 'not-finite'],
    ['1e999 gpm', 'flow', 'not-finite'],
    ['7.50 per 0 lb', 'price-mass', 'not-finite'],
    ['-5 gpm', 'flow', 'negative'],
    ['-500 °F', 'temperature', 'negative'],
  ])('%s as %s is refused: %s', (text, kind, what) => {
    expect(problem(text, kind).what).toBe(what);
  });

  test.each<[string, QuantityKind, string]>([
    ['1,5 gpm', 'flow', '1.5 gpm'],
    ['1.200,5 gal', 'volume', '1200.5 gal'],
    ['0,250 gpm', 'flow', '0.250 gpm'],
    ['-0,5 °C', 'temperature', '-0.5 °C'],
    ['5 ft 6,5 in', 'length', '5 ft 6.5 in'],
    ['7,50 per 40 lb', 'price-mass', '7.50 per 40 lb'],
    ['7.50 per 22,7 kg', 'price-mass', '7.50 per 22.7 kg'],
  ])('the mend of %s (%s) is %s, and it can be read', (text, kind, mended) => {
    expect(problem(text, kind)).toMatchObject({ what: 'decimal-comma', mended });
    expect(parseQuantity(mended, kind).ok).toBe(true);
  });

  test('a problem names the units that may be written', () => {
    expect(problem('5', 'salt-dose').units).toEqual(['lb/ft3', 'g/L', 'kg/m3']);
    expect(problem('x', 'count').units).toEqual([]);
  });

  test('a unit of another kind is told what it measures', () => {
    expect(problem('5 psi', 'flow')).toMatchObject({ unit: 'psi', measures: ['pressure'] });
  });

  test('milli is never taken for mega', () => {
    expect(problem('5 mPa', 'pressure').what).toBe('unknown-unit');
    expect(problem('5 Mg', 'mass').what).toBe('unknown-unit');
    expect(figure('0.5 MPa', 'pressure', 'bar')).toBeCloseTo(5, 12);
  });

  test('mg/L alone says nothing of charge', () => {
    expect(problem('50 mg/L', 'equivalent-concentration').what).toBe('wrong-kind');
  });
});
