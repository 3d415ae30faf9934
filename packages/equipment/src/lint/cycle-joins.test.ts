import { expect, test } from 'vitest';
import { codesOf, lintAfter, replacing } from '../../test/small-family.ts';

const found = (from: string, to: string) =>
  lintAfter(replacing(from, to))
    .filter(({ code }) => code.startsWith('lint.join-'))
    .map(({ code, message }) => [code, message.values?.stop, message.values?.join]);

test('joins that serve the cycle pass', () => {
  expect(codesOf(lintAfter((text) => text)).filter((code) => code.startsWith('lint.join'))).toEqual([]);
});

test('each step must join what its water needs', () => {
  expect(found('service: [IN+TOP, OUT+BOT]', 'service: [IN+TOP]')).toContainEqual([
    'lint.join-missing',
    'service',
    'BOT+OUT',
  ]);
  expect(found('backwash: [IN+BOT, TOP+DR]', 'backwash: [IN+BOT]')).toEqual([
    ['lint.join-missing', 'backwash', 'TOP+DR'],
  ]);
  expect(found('brine: [BOT+DR]', 'brine: [IN+OUT]')).toEqual([['lint.join-missing', 'brine', 'BOT+DR']]);
  expect(found('fast-rinse: [IN+TOP, BOT+DR]', 'fast-rinse: [BOT+DR]')).toEqual([
    ['lint.join-missing', 'fast-rinse', 'IN+TOP'],
  ]);
});

test('no step may lead treated or raw water to the drain past the bed', () => {
  expect(found('brine: [BOT+DR]', 'brine: [BOT+DR+OUT]')).toEqual([
    ['lint.join-forbidden', 'brine', 'OUT+DR'],
  ]);
  expect(found('backwash: [IN+BOT, TOP+DR]', 'backwash: [IN+BOT+TOP+DR]')).toEqual([
    ['lint.join-forbidden', 'backwash', 'IN+DR'],
  ]);
});

test('in service raw water may not reach the outlet', () => {
  expect(found('service: [IN+TOP, OUT+BOT]', 'service: [IN+TOP+OUT+BOT]')).toContainEqual([
    'lint.join-forbidden',
    'service',
    'IN+OUT',
  ]);
});
