import { describe, expect, test } from 'vitest';
import { readyAt } from './waiting.ts';

describe('a wait', () => {
  test('is ready at a time of the clock, whatever happened in between', () => {
    const start = Date.parse('2026-11-25T10:57:00Z');
    expect(readyAt(start, 45, start + 60_000)).toEqual({ clock: '11:42', minutesLeft: 44, isReady: false });
    expect(readyAt(start, 45, start + 46 * 60_000)).toMatchObject({ minutesLeft: 0, isReady: true });
  });
});
