import { expect, test } from 'vitest';
import { codesOf, lintAfter } from '../../test/small-family.ts';

const code = 'lint.unreachable-part';

test('parts that fit some build pass', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('a part that only fits builds which are never made is an error', () => {
  const issue = lintAfter((text) => `${text}never: [{size: broad}]\n`).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'error', place: { file: '1.yaml', line: 24 } });
});
