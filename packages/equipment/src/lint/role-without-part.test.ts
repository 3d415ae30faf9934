import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.role-without-part';

test('a repair whose parts can be ordered passes', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('a repair that replaces what no part is gets a warning', () => {
  const issue = lintAfter((text) =>
    replacing('is: seal, title', 'is: ring, title')(replacing('is: seal, title', 'is: ring, title')(text)),
  ).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'warning', place: { file: '1.yaml', line: 21 } });
});
