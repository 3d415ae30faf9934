import { expect, test } from 'vitest';
import {
  compiledFrom,
  familyFrom,
  replacing,
  smallFamily,
  smallStock,
  soundFrom,
} from '../../test/small-family.ts';
import { originsOf } from './origins.ts';

const harrow = (change: (text: string) => string) => familyFrom(smallStock, change(smallFamily));
const adding = (lines: string) => (text: string) => text + lines;
const codes = (...texts: readonly string[]) =>
  compiledFrom(...texts).issues.map(({ code, place }) => [code, place?.file, place?.line]);

test('a family takes what its stock has and changes single keys of it', () => {
  const family = harrow(adding('operations:\n  cover-off: {minutes: 2}\n'));
  expect(family.operations.map(({ id, minutes }) => [id, minutes.hands])).toEqual([
    ['cover-off', 2],
    ['piston-out', 1],
  ]);
  expect(family.operations[0]?.order).toEqual({ en: 'Take the cover off', es: 'Quite la tapa' });
});

test('lists are replaced, never merged', () => {
  const family = harrow(adding('operations:\n  piston-out: {after: []}\n'));
  expect(family.operations.find(({ id }) => id === 'piston-out')?.after).toEqual([]);
});

test('off removes an entry, and everything that mentions it lets go', () => {
  const family = harrow(
    adding('operations:\n  cover-off: {off: true}\nfaults:\n  leak-raw-to-drain: {off: true}\n'),
  );
  expect(family.operations.map(({ id, after }) => [id, after])).toEqual([['piston-out', [[]]]]);
  expect(family.tests[0]?.outcomes.map(({ faults }) => faults)).toEqual([{}, {}]);
  expect(family.complaints[0]?.faults).toEqual({});
});

test('odds of a family are relative to those of its stock', () => {
  expect(harrow(adding('faults:\n  leak-raw-to-drain: {odds: 2}\n')).faults[0]?.odds).toBe(6);
});

test('what only changes an entry that the stock does not have is told once, with the one that was meant', () => {
  const result = compiledFrom(smallStock, `${smallFamily}operations:\n  cover-of: {minutes: 2}\n`);
  expect(result.issues).toMatchObject([
    { code: 'reference.stray', place: { line: 27, column: 3 }, mend: { values: { near: 'cover-off' } } },
  ]);
});

test('off for what is not there is an error', () => {
  expect(codes(smallStock, `${smallFamily}tests: {drian-in-service: {off: true}}\n`)).toEqual([
    ['reference.unknown', '1.yaml', 26],
  ]);
});

test('an unknown stock, a loop and two levels are errors at the line that says like', () => {
  expect(codes(smallStock, replacing('stock/small', 'stock/smal')(smallFamily))).toEqual([
    ['reference.unknown', '1.yaml', 4],
  ]);
  expect(codes('stock: loop\ntitle: Loop\nsource: invented\nlike: stock/loop\n')).toEqual([
    ['like.loop', '0.yaml', 4],
  ]);
  const middle = 'stock: middle\ntitle: Middle\nsource: invented\nlike: stock/small\n';
  expect(codes(smallStock, middle, replacing('stock/small', 'stock/middle')(smallFamily))).toEqual([
    ['like.two-levels', '2.yaml', 4],
  ]);
});

test('a broken stock is not told again at every family like it', () => {
  expect(codes(`${smallStock}tels: {}\n`, smallFamily)).toEqual([['schema.unknown-key', '0.yaml', 44]]);
});

test('a controller takes what it leaves out from a controller of any stock', () => {
  const clocks =
    'stock: clocks\ntitle: Clocks\nsource: invented\ncontrollers:\n  clock: {holds: [backwash], times: 1 min to 9 min by 1 min}\n';
  const change = replacing(
    'dial: {holds: [backwash, brine, fast-rinse, refill], times: 2 min to 80 min by 2 min}',
    'dial: {like: stock/clock, holds: [brine]}',
  );
  const [dial] = familyFrom(smallStock, clocks, change(smallFamily)).controllers;
  expect(dial).toMatchObject({ id: 'dial', holds: ['brine'], times: { max: { as: '9 min', si: 540 } } });
});

test('every line of the merged family knows the file and line it came from', () => {
  const compiled = soundFrom(smallStock, `${smallFamily}operations:\n  cover-off: {minutes: 2}\n`);
  const source = compiled.sources.get('harrow');
  const origins = source === undefined ? new Map() : originsOf(source);
  expect(origins.get('operations.cover-off.minutes')).toMatchObject({ file: '1.yaml', line: 27 });
  expect(origins.get('operations.cover-off.order')).toMatchObject({ file: '0.yaml', line: 15 });
  expect(origins.get('bores.main.ports')).toMatchObject({ file: '1.yaml', line: 12 });
});

test('a stock named without its first word is found', () => {
  const near = (text: string) => compiledFrom(smallStock, text).issues.map(({ mend }) => mend?.values?.near);
  expect(near(replacing('like: stock/small', 'like: small')(smallFamily))).toEqual(['stock/small']);
  const stock = 'stock: plain\ncontrollers: {metered: {holds: [backwash], times: 1 min to 9 min by 1 min}}\n';
  const family = replacing('dial: {', 'dial: {like: metered, ')(smallFamily);
  expect(compiledFrom(smallStock, stock, family).issues.map(({ mend }) => mend?.values?.near)).toContain(
    'stock/metered',
  );
});
