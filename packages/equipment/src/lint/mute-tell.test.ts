import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.mute-tell';

test('a tell whose answers part builds passes', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('a tell whose answers allow the same builds is an error', () => {
  const issue = lintAfter(replacing('"4": {size: broad}', '"4": {size: slim}')).find(
    (one) => one.code === code,
  );
  expect(issue).toMatchObject({ severity: 'error', place: { file: '1.yaml', line: 10 } });
});
