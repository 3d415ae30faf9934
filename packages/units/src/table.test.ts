import { describe, expect, test } from 'vitest';
import { fromUnit, toUnit } from './convert.ts';
import { unitKey } from './find-unit.ts';
import { kinds, type QuantityKind } from './kinds.ts';
import { quantity } from './quantity.ts';
import { unitsByKind, unitTable } from './table.ts';

const convert = (value: number, from: string, to: string, kind: QuantityKind): number =>
  toUnit(fromUnit(value, from, kind), to);

const within = (value: number, expected: number, relative: number): void => {
  expect(Math.abs(value / expected - 1)).toBeLessThan(relative);
};

/** Typed from definitions and from the reference table, not computed by this package. */
const known = [
  ['gal', 'L', 'volume', 3.785411784],
  ['imp gal', 'L', 'volume', 4.54609],
  ['ft3', 'gal', 'volume', 7.480519481],
  ['gr', 'mg', 'mass', 64.79891],
  ['bar', 'psi', 'pressure', 14.50377377],
  ['gpm', 'L/s', 'flow', 0.0630901964],
  ['gpm/ft2', 'm/h', 'superficial-velocity', 2.44475],
  ['gpm/ft3', 'BV/h', 'specific-flow', 8.020833333],
  ['lb/ft3', 'g/L', 'salt-dose', 16.01846337],
  ['gpg', 'mg/L', 'hardness', 17.11806105],
  ['English degree', 'mg/L CaCO3', 'hardness', 14.25376752],
  ['°dH', 'mg/L CaCO3', 'hardness', 17.84799224],
  ['°dH', 'mmol/L', 'hardness', 0.178324958],
  ['°fH', 'mg/L CaCO3', 'hardness', 10],
  ['mmol/L', 'mg/L CaCO3', 'hardness', 100.0869],
  ['meq/L', 'mg/L CaCO3', 'hardness', 50.04345],
  ['mg/L Ca', 'mg/L CaCO3', 'hardness', 2.49730276],
  ['mg/L Mg', 'mg/L CaCO3', 'hardness', 4.117955153],
  ['kgr/ft3', 'eq/L', 'capacity', 0.04572730119],
  ['kgr/ft3', 'g/L CaCO3', 'capacity', 2.288351911],
  ['dS/m', 'uS/cm', 'conductivity', 1000],
  ['lb/gal', 'g/L', 'concentration', 119.8264273],
  ['inHg', 'kPa', 'pressure', 3.386389],
] as const;

describe('the table of units', () => {
  test.each(known)('one %s in %s (%s) is %d', (from, to, kind, expected) => {
    within(convert(1, from, to, kind), expected, 1e-6);
  });

  test('a foot of water is that of 60 °F', () => {
    within(convert(1, 'ftH2O', 'psi', 'pressure'), 0.4331013819, 1e-6);
  });

  test.each([
    [32, 0],
    [212, 100],
    [-40, -40],
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(convert(fahrenheit, 'degF', 'degC', 'temperature')).toBeCloseTo(celsius, 10);
  });

  test('a pound of salt exchanges 5,994 grains at most', () => {
    within(toUnit(quantity('salt-efficiency', 1 / 0.058443), 'gr/lb'), 5993.945383, 1e-6);
  });

  test('salt efficiency and salt per exchange are each other turned over', () => {
    within(
      convert(1, 'lb/kgr', 'kg/eq', 'salt-per-exchange') * convert(1, 'kgr/lb', 'eq/kg', 'salt-efficiency'),
      1,
      1e-12,
    );
  });

  test('every kind has units, one of them the SI unit', () => {
    for (const kind of Object.keys(kinds)) {
      const rows = unitTable.filter((row) => row.kind === kind);
      expect(
        rows.some((row) => row.factor === 1 && row.offset === 0),
        kind,
      ).toBe(true);
    }
    expect(unitsByKind.size).toBe(Object.keys(kinds).length);
  });

  test('no spelling stands for two sizes of one kind, capitals or not', () => {
    const seen = new Map<string, number>();
    for (const row of unitTable) {
      for (const spelling of [row.symbol, row.shown, ...row.aliases]) {
        const key = `${row.kind} ${unitKey(spelling).toLowerCase()}`;
        expect(seen.get(key) ?? row.factor, key).toBe(row.factor);
        seen.set(key, row.factor);
      }
    }
  });

  test('symbols are ASCII and factors are above zero', () => {
    for (const row of unitTable) {
      expect(row.symbol).toMatch(/^[ -~]*$/);
      expect(row.factor).toBeGreaterThan(0);
    }
  });

  test('symbols are printed with their signs', () => {
    const shown = (symbol: string): string | undefined =>
      unitTable.find((row) => row.symbol === symbol)?.shown;
    expect(['ft3', 'gpm/ft2', 'degF', 'uS/cm', 'mg/L CaCO3', 'Pa.s', 'ftH2O', 'degdH'].map(shown)).toEqual([
      'ft³',
      'gpm/ft²',
      '°F',
      'µS/cm',
      'mg/L CaCO₃',
      'Pa·s',
      'ftH₂O',
      '°dH',
    ]);
  });
});
