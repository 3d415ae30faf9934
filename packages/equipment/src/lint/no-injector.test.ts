import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.no-injector';

test('builds whose injector is described pass', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('a build whose injector is not described is an error', () => {
  const issue = lintAfter(replacing('injector: [a, b]', 'injector: [a, b, c]')).find(
    (one) => one.code === code,
  );
  expect(issue).toMatchObject({ severity: 'error', place: { file: '1.yaml', line: 8 } });
});
