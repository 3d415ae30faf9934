import { expect, test } from 'vitest';
import { codesOf, lintAfter, smallStock } from '../../test/small-family.ts';

const code = 'lint.precedence-loop';
const unchanged = (text: string): string => text;

test('operations in an order pass, and so does a loop that another way leads round', () => {
  const roundabout = `${smallStock}`.replace('minutes: 1', 'after: [[piston-out], []]');
  expect(codesOf(lintAfter(unchanged))).not.toContain(code);
  expect(codesOf(lintAfter(unchanged, roundabout))).not.toContain(code);
});

test('operations that wait for one another are named in a ring', () => {
  const ring = smallStock.replace('minutes: 1', 'after: [piston-out]');
  const issue = lintAfter(unchanged, ring).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'error', place: { file: '0.yaml', line: 16 } });
  expect(issue?.message.values?.loop).toBe('cover-off → piston-out → cover-off');
});
