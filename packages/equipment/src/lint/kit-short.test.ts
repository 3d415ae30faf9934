import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const code = 'lint.kit-short';

test('a kit that holds all seals of the stack passes', () => {
  expect(codesOf(lintAfter((text) => text))).not.toContain(code);
});

test('a kit with fewer seals than the stack is an error', () => {
  const issue = lintAfter(replacing('{seal-slim: all}', '{seal-slim: 6}')).find((one) => one.code === code);
  expect(issue).toMatchObject({ severity: 'error', place: { file: '1.yaml', line: 25 } });
});

test('a kit whose seals do not fit a build that it is for is an error', () => {
  const issues = lintAfter(
    replacing('fits: {size: slim}, holds: {seal-slim: all}', 'holds: {seal-slim: all}'),
  );
  expect(issues.find((one) => one.code === 'lint.kit-lacks')?.message.values).toMatchObject({
    kit: 'kit-slim',
    role: 'seal',
  });
});
