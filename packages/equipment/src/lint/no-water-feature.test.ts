import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.no-water-feature';

test('a family that says which water it is for passes', () => {
  const codes = codesOf(lintAfter(replacing('injector: [a, b]', 'injector: [a, b]\n  water: [cold]')));
  expect(codes).not.toContain(code);
});

test('a family without the feature water gets a note under features', () => {
  const issue = lintAfter((text) => text).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'note', place: { file: '1.yaml', line: 6 } });
});
