import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.no-spanish';

test('texts in both languages pass', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('texts of the own file without Spanish are a note', () => {
  const issue = lintAfter(replacing('title: {en: Piston, es: Pistón}', 'title: Piston')).find(
    (one) => one.code === code,
  );
  expect(issue).toMatchObject({ severity: 'note', place: { file: '1.yaml', line: 22 } });
});
