import {
  fromUnit,
  parseQuantity,
  type Quantity,
  type QuantityKind,
  quantity,
  type UnitSystem,
} from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import { formatNumber } from './format-number.ts';
import { formatQuantity } from './format-quantity.ts';

const text = (q: Quantity, system: UnitSystem = 'us'): string =>
  formatQuantity(q, { system, language: 'en' }).text;

const entered = (as: string, kind: QuantityKind): Quantity => {
  const parsed = parseQuantity(as, kind);
  if (!parsed.ok) throw new Error(as);
  return parsed.quantity;
};

describe('figures', () => {
  test.each<[number, string]>([
    [0, '0'],
    [-0, '0'],
    [5, '5'],
    [1234, '1,234'],
    [1234.56, '1,235'],
    [0.123456, '0.123'],
    [-1.5, '−1.5'],
    [-0.0001, '−0.0001'],
  ])('%d is shown as %s', (value, expected) => {
    expect(formatNumber(value)).toBe(expected);
  });

  test('a figure that is not finite is our mistake', () => {
    expect(() => formatNumber(Number.NaN)).toThrow(RangeError);
    expect(() => text(quantity('flow', Number.POSITIVE_INFINITY))).toThrow(RangeError);
  });
});

describe('quantities for the reader', () => {
  test('a computed value is in the unit of the system, with three digits and a space that does not break', () => {
    const hardness = fromUnit(18.04567, 'gpg', 'hardness');
    expect(text(hardness)).toBe('18\u00a0gpg');
    expect(text(hardness, 'metric')).toBe('309\u00a0mg/L\u00a0CaCO₃');
    expect(text(fromUnit(3513.2, 'gal', 'volume'))).toBe('3,510\u00a0gal');
    expect(text(fromUnit(-5, 'degC', 'temperature'), 'metric')).toBe('−5\u00a0°C');
  });

  test('figure and unit are given apart for tables', () => {
    const dose = fromUnit(8, 'lb/ft3', 'salt-dose');
    expect(formatQuantity(dose, { system: 'us', language: 'es' })).toEqual({
      figure: '8',
      unit: 'lb/ft³',
      text: '8\u00a0lb/ft³',
    });
  });

  test('unit and digits can be asked for', () => {
    const flow = fromUnit(5, 'gpm', 'flow');
    expect(formatQuantity(flow, { system: 'us', language: 'en', unit: 'm3/h', digits: 5 }).text).toBe(
      '1.1356\u00a0m³/h',
    );
    expect(() => formatQuantity(flow, { system: 'us', language: 'en', unit: 'gal' })).toThrow(RangeError);
  });

  test('what was entered stays as entered in the reader’s own system', () => {
    expect(text(entered('5.0 gpm', 'flow'))).toBe('5.0\u00a0gpm');
    expect(text(entered('3513 gal', 'volume'))).toBe('3,513\u00a0gal');
    expect(text(entered('1 1/2 in', 'length'))).toBe('1½\u00a0in');
    expect(text(entered('3/4"', 'length'))).toBe('¾\u00a0in');
    expect(text(entered('5/16 in', 'length'))).toBe('5/16\u00a0in');
    expect(text(entered('90 s', 'time'))).toBe('90\u00a0s');
    expect(text(entered('-5 degC', 'temperature'), 'metric')).toBe('−5\u00a0°C');
  });

  test('and is converted for a reader of the other', () => {
    expect(text(entered('308 ppm', 'hardness'))).toBe('18\u00a0gpg');
    expect(text(entered('1 in', 'length'), 'metric')).toBe('25.4\u00a0mm');
  });

  test('counts and plain numbers have no unit and counts no rounding', () => {
    expect(text(quantity('count', 12345))).toBe('12,345');
    expect(text(quantity('ratio', 2.60606))).toBe('2.61');
    expect(text(quantity('share', 0.5))).toBe('50\u00a0%');
    expect(text(quantity('ph', 7.25))).toBe('7.25');
  });

  test('prices stand by the unit of what is bought, in the currency of the site', () => {
    const price = entered('9 per 1000 gal', 'price-volume');
    expect(formatQuantity(price, { system: 'us', language: 'en', currency: '$' }).text).toBe(
      '$9/1,000\u00a0gal',
    );
    expect(formatQuantity(price, { system: 'metric', language: 'en', currency: 'MXN' }).text).toBe(
      '2.38\u00a0MXN/m³',
    );
    expect(
      formatQuantity(quantity('money', 1394.4), { system: 'us', language: 'en', currency: '$' }).figure,
    ).toBe('$1,394');
    expect(text(quantity('money', 7.5))).toBe('7.50');
    expect(text(quantity('money', 84))).toBe('84');
  });
});
