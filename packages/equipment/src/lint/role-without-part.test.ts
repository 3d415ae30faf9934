import { expect, test } from 'vitest';
import { lintAfter, replacing, smallStock } from '../../test/small-family.ts';

const without = (stock = smallStock) =>
  lintAfter(
    (text) =>
      replacing('is: seal, title', 'is: ring, title')(replacing('is: seal, title', 'is: ring, title')(text)),
    stock,
  ).filter(({ code }) => code === 'lint.role-without-part');

const fault = (id: string, more = '') =>
  `  ${id}: {title: X, explains: X, mend: X, repair: {replace: [seal]}${more}}\n`;
const withFaults = (...faults: readonly string[]): string =>
  smallStock.replace('tests:\n', `${faults.join('')}tests:\n`);

test('a repair whose parts can be ordered passes', () => {
  const found = lintAfter((text) => text);
  expect(found.filter(({ code }) => code === 'lint.role-without-part')).toEqual([]);
});

test('a repair that replaces what no part is gets a warning on the parts', () => {
  expect(without()).toMatchObject([
    {
      severity: 'warning',
      place: { file: '1.yaml', line: 21 },
      message: { values: { role: 'seal', faults: 'leak-raw-to-drain', more: 0 } },
    },
  ]);
});

test('a role is asked for once, with three of the faults it mends and how many more there are', () => {
  const found = without(withFaults(fault('a'), fault('b'), fault('c'), fault('d')));
  expect(found.map(({ message }) => message.values)).toEqual([
    { role: 'seal', faults: 'leak-raw-to-drain, a, b', more: 2 },
  ]);
});

test('faults of kinds that the family has not are not counted', () => {
  const found = without(withFaults(fault('of-filter', ', kinds: [filter]')));
  expect(found[0]?.message.values).toMatchObject({ faults: 'leak-raw-to-drain', more: 0 });
});
