import { describe, expect, test } from 'vitest';
import { situationOf } from '../testing/tiny-family.ts';
import { tinyOperations } from '../testing/tiny-operations.ts';
import { accessFrom } from './access.ts';

const s = situationOf({ family: tinyOperations() });
const after = (...done: readonly string[]) =>
  accessFrom({ ...s, visit: { ...s.visit, done: done.map((operation) => ({ operation })) } });

describe('minutes to get at something', () => {
  test('are none for what needs nothing off', () => {
    expect(accessFrom(s)([])).toBe(0);
  });

  test('are taking off and putting on for a cover that needs no water off', () => {
    expect(accessFrom(s)(['cover-off'])).toBe(3);
  });

  test('count shutting the water and opening it again where that is needed', () => {
    const preparing = 6 * 2;
    const opening = 4 * 2;
    expect(accessFrom(s)(['injector-out'])).toBe(preparing + 4 + opening);
  });

  test('leave out what is off already', () => {
    const access = after('photograph', 'warn', 'shut', 'vent', 'unplug', 'verify');
    expect(access(['injector-out'])).toBe(4);
    expect(
      after('photograph', 'warn', 'shut', 'vent', 'unplug', 'verify', 'injector-out')(['injector-out']),
    ).toBe(0);
  });

  test('count again what was put back', () => {
    expect(after('cover-off', 'cover-off.back')(['cover-off'])).toBe(3);
  });

  test('count once what two things share', () => {
    const access = accessFrom(s);
    expect(access(['cover-off', 'cover-off'])).toBe(access(['cover-off']));
  });
});
