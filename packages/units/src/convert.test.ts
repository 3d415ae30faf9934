import { describe, expect, test } from 'vitest';
import { fromUnit, likelyUnits, toUnit } from './convert.ts';
import { isQuantityKind, kinds } from './kinds.ts';
import { parseQuantity } from './parse-quantity.ts';
import { quantity } from './quantity.ts';
import { shownUnit } from './shown-unit.ts';
import { enteredAs, writeQuantity } from './written-quantity.ts';

describe('changing units', () => {
  test('a unit the kind does not have is our mistake', () => {
    expect(() => toUnit(quantity('flow', 1), 'gal')).toThrow(RangeError);
    expect(() => fromUnit(1, 'gal', 'flow')).toThrow(RangeError);
  });

  test('an implausible reading is offered the units that would make it plausible', () => {
    expect(likelyUnits(300, 'hardness', { min: 0, max: 14 })).toEqual(['mg/L CaCO3']);
    expect(likelyUnits(60, 'temperature', { min: 273, max: 310 })).toEqual(['degF']);
    expect(likelyUnits(1e12, 'flow', { min: 0, max: 1 })).toEqual([]);
  });
});

describe('the unit shown', () => {
  test.each(Object.keys(kinds).filter(isQuantityKind))(
    '%s has one in both systems and at every size',
    (kind) => {
      for (const si of [undefined, 0, 1e-6, 1e-3, 1, 1e3, 1e6]) {
        expect(shownUnit(kind, 'us', si).kind).toBe(kind);
        expect(shownUnit(kind, 'metric', si).system).not.toBe('us');
      }
    },
  );

  test('lengths and times take a unit of their size', () => {
    expect([0.003, 0.12, 1.6, 40].map((si) => shownUnit('length', 'metric', si).symbol)).toEqual([
      'mm',
      'cm',
      'cm',
      'm',
    ]);
    expect([30, 600, 36_000, 345_600].map((si) => shownUnit('time', 'us', si).symbol)).toEqual([
      's',
      'min',
      'h',
      'd',
    ]);
    expect([0.86, 15].map((si) => shownUnit('length', 'us', si).symbol)).toEqual(['in', 'ft']);
  });
});

describe('text of a quantity', () => {
  test('what was entered is kept; a computed value is written in SI in full', () => {
    expect(writeQuantity(quantity('hardness', 6.157151, '18 gpg'))).toBe('18 gpg');
    expect(writeQuantity(quantity('flow', 0.0001))).toBe('0.0001 m3/s');
    expect(writeQuantity(quantity('count', 3))).toBe('3');
  });

  test('figure and unit as entered are found again, but not for a text that says something else', () => {
    const entered = (text: string) => {
      const parsed = parseQuantity(text, 'length');
      return parsed.ok ? enteredAs(parsed.quantity) : undefined;
    };
    expect(entered('1 1/2 in')).toMatchObject({ figure: '1 1/2', row: { symbol: 'in' } });
    expect(entered('5 ft 6 in')).toBeUndefined();
    expect(enteredAs(quantity('length', 9, '1 in'))).toBeUndefined();
  });
});
