import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.still-to-enter';

test('a family with all that a manual gives has nothing to enter', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('what a manual would still give is named at the end', () => {
  const issue = lintAfter(replacing('controls: {drain: {"4": 4 gpm}, refill: {S: 0.25 gpm}}\n', '')).find(
    (one) => one.code === code,
  );
  expect(issue).toMatchObject({ severity: 'note', place: { file: '1.yaml', line: 1 } });
});
