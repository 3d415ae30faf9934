import { describe, expect, test } from 'vitest';
import { sizeWithin } from './keep-photo.ts';
import { isNearlyFull, sizeText } from './storage.ts';

describe('room on the device', () => {
  test('the warning comes at 80 of 100 parts, and never where the room is not known', () => {
    expect(isNearlyFull({ used: 79, quota: 100, isKept: true })).toBe(false);
    expect(isNearlyFull({ used: 80, quota: 100, isKept: true })).toBe(true);
    expect(isNearlyFull({ used: 0, quota: 0, isKept: false })).toBe(false);
  });

  test.each([
    [400, '1\u00a0MB'],
    [340e6, '340\u00a0MB'],
    [1.24e9, '1.2\u00a0GB'],
  ])('%d bytes are told as %s', (bytes, text) => {
    expect(sizeText(bytes)).toBe(text);
  });

  test('a photo is made smaller, never larger, and keeps its shape', () => {
    expect(sizeWithin(4000, 3000)).toEqual({ width: 1600, height: 1200 });
    expect(sizeWithin(300, 4800)).toEqual({ width: 100, height: 1600 });
    expect(sizeWithin(800, 600)).toEqual({ width: 800, height: 600 });
  });
});
