import { quantity } from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import { formatMessage, formatText, missingValues } from './format.ts';
import { message } from './message.ts';
import { compilePattern } from './pattern.ts';

const english = { language: 'en', system: 'us' } as const;
const spanish = { language: 'es', system: 'metric' } as const;

describe('messages', () => {
  test('text, numbers, quantities and messages inside a message are formatted for the reader', () => {
    const told = (text: Parameters<typeof message>[1]) => message('units.problem.missing-unit', text);
    expect(formatMessage(told({ text: 'a' }), english)).toBe('“a” has no unit.');
    expect(formatMessage(told({ text: 1234 }), spanish)).toBe('“1,234” no tiene unidad.');
    expect(formatMessage(told({ text: { en: 'salt', es: 'sal' } }), spanish)).toBe('“sal” no tiene unidad.');
    expect(formatMessage(told({ text: message('units.kind.flow') }), spanish)).toBe(
      '“flujo” no tiene unidad.',
    );
    expect(formatMessage(told({ text: quantity('mass', 0.45359237) }), english)).toBe(
      '“1\u00a0lb” has no unit.',
    );
    expect(formatMessage(told({ text: quantity('mass', 0.45359237) }), spanish)).toBe(
      '“0.454\u00a0kg” no tiene unidad.',
    );
  });

  test('a value that was not given is shown by its name, and tests find it', () => {
    const outer = message('units.problem.no-number', { text: message('units.problem.missing-unit') });
    expect(formatMessage(outer, english)).toBe('““‹text›” has no unit.” does not begin with a number.');
    expect(missingValues(outer)).toEqual(['units.problem.missing-unit: text']);
    expect(missingValues(message('units.kind.flow'))).toEqual([]);
  });

  test('a text without Spanish is shown in English', () => {
    expect(formatText({ en: 'riser' }, 'es')).toBe('riser');
    expect(formatText({ en: 'riser', es: 'tubo central' }, 'es')).toBe('tubo central');
    expect(formatText('riser', 'es')).toBe('riser');
  });

  test('what an entry holds is never taken for a pattern', () => {
    expect(formatMessage(message('units.problem.no-number', { text: "{x} <b> # '" }), english)).toBe(
      "“{x} <b> # '” does not begin with a number.",
    );
  });
});

describe('patterns', () => {
  const seals = '{n, plural, one {# seal in {place}} other {# seals in {place}}}';

  test('placeholders are told apart by what they do, also inside a plural', () => {
    expect(compilePattern(seals, 'en').placeholders).toEqual([
      { name: 'n', use: 'counted' },
      { name: 'place', use: 'shown' },
    ]);
    expect(compilePattern('{how, select, read {a} other {b}}', 'en').placeholders).toEqual([
      { name: 'how', use: 'chosen' },
    ]);
  });

  test('counts are written alike in both languages', () => {
    const many = (language: 'en' | 'es') =>
      compilePattern(seals, language).format.format({ n: 1234, place: 'x' });
    expect([many('en'), many('es')]).toEqual(['1,234 seals in x', '1,234 seals in x']);
    expect(compilePattern(seals, 'es').format.format({ n: 1, place: 'x' })).toBe('1 seal in x');
  });
});
