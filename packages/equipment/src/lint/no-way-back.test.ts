import { expect, test } from 'vitest';
import { codesOf, lintAfter, smallStock } from '../../test/small-family.ts';

const code = 'lint.no-way-back';
const unchanged = (text: string): string => text;

test('an operation that takes something out and says how it goes back passes', () => {
  expect(codesOf(lintAfter(unchanged))).not.toContain(code);
});

test('an operation that takes something out without a way back is an error', () => {
  const stock = smallStock.replace(/\n {4}back: .*/u, '');
  const issue = lintAfter(unchanged, stock).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'error', place: { file: '0.yaml', line: 17 } });
});
