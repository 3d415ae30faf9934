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

test('an injector that no build has is offered where its name is close', () => {
  const issue = lintAfter((text) =>
    replacing('a: {nozzle', 'ash: {nozzle')(replacing('injector: [a, b]', 'injector: [asch, b]')(text)),
  ).find((one) => one.code === code);
  expect(issue?.mend?.values).toEqual({ near: 'ash' });
});
