import { parseQuantity, parseRange, type QuantityKind, type QuantityProblem } from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import { formatMessage, missingValues } from './format.ts';
import { quantityProblemMessages } from './format-problem.ts';
import type { Language } from './message.ts';

const problemOf = (text: string, kind: QuantityKind): QuantityProblem => {
  const parsed = text.includes('range ')
    ? parseRange(text.replace('range ', ''), kind)
    : parseQuantity(text, kind);
  if (parsed.ok) throw new Error(`${text} can be read`);
  return parsed.problem;
};

const told = (text: string, kind: QuantityKind, language: Language): string => {
  const { message, mend } = quantityProblemMessages(problemOf(text, kind));
  return [message, mend].map((part) => formatMessage(part, { language, system: 'us' })).join(' ');
};

describe('problems in words', () => {
  test.each<[string, QuantityKind, string]>([
    ['gpm', 'flow', '“gpm” does not begin with a number.'],
    [
      '5',
      'salt-dose',
      '“5” has no unit. Write salt dose as a number with a unit. Units: lb/ft3, g/L, kg/m3.',
    ],
    ['5 psx', 'pressure', '“5 psx”: “psx” is not a known unit.'],
    ['5 gal', 'flow', '“5 gal”: “gal” is a unit of volume, and flow is asked for.'],
    ['1,5 gpm', 'flow', 'Write 1.5 gpm.'],
    ['1/0 in', 'length', '“1/0 in” is no finite number.'],
    ['-5 gpm', 'flow', '“-5 gpm” is below zero, and flow is not.'],
    ['-500 °F', 'temperature', '“-500 °F” is below absolute zero.'],
    ['x', 'count', 'Write a plain number, for instance 2 or 0.5.'],
    ['range 5 psi', 'pressure', '“5 psi” is not a range. Write 1 psi to 2 psi.'],
    ['range 9 in to 6 in', 'length', 'starts above its end. Write 6 in to 9 in.'],
    ['range 1 min to 9 min by 0 min', 'time', 'Give a step above zero, or leave it out.'],
  ])('%s as %s', (text, kind, expected) => {
    expect(told(text, kind, 'en')).toContain(expected);
    expect(told(text, kind, 'es')).not.toContain(expected);
    const { message, mend } = quantityProblemMessages(problemOf(text, kind));
    expect([...missingValues(message), ...missingValues(mend)]).toEqual([]);
  });

  test('Spanish says the same', () => {
    expect(told('5 gal', 'flow', 'es')).toContain(
      '“5 gal”: “gal” es unidad de volumen y aquí se pide flujo.',
    );
    expect(told('1,5 gpm', 'flow', 'es')).toBe(
      '“1,5 gpm” tiene coma decimal; la coma solo separa los millares. Escriba 1.5 gpm.',
    );
  });
});
