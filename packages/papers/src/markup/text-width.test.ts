import { expect, test } from 'vitest';
import { textWidth, wrapped } from './text-width.ts';

test('wide letters take more room than narrow ones, and strong text more than plain', () => {
  expect(textWidth('WWW', 15)).toBeGreaterThan(textWidth('iii', 15) * 2);
  expect(textWidth('Riser', 15, true)).toBeGreaterThan(textWidth('Riser', 15));
});

test('an accent adds no width', () => {
  expect(textWidth('válvula', 15)).toBe(textWidth('valvula', 15));
});

test('lines are broken between words and stay within the width', () => {
  const lines = wrapped('Sello roto entre el tubo central y el drenaje', 15, 120);
  expect(lines.join(' ')).toBe('Sello roto entre el tubo central y el drenaje');
  expect(lines.every((line) => textWidth(line, 15) <= 120)).toBe(true);
  expect(lines.length).toBeGreaterThan(1);
});

test('a single word that is too long stays whole', () => {
  expect(wrapped('Retrolavado', 15, 10)).toEqual(['Retrolavado']);
});
