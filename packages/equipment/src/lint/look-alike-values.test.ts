import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.look-alike-values';

test('values that a tell parts pass', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('values with other parts that no tell parts are a warning', () => {
  const issue = lintAfter(
    replacing('"3": {size: slim}, "4": {size: broad}', '"3": {injector: a}, "4": {injector: b}'),
  ).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'warning', place: { file: '1.yaml', line: 7 } });
});
