import { describe, expect, it } from 'vitest';
import { readTable } from './read-data.ts';
import { claimsOf, readExamples } from './read-examples.ts';

describe('reading the data', () => {
  it('skips notes and mixed line ends', () => {
    const [first] = readTable('units.csv');
    expect(first?.text('mark')).toBe('memory, exact by definition');
    expect(readTable('water-properties.csv')).toHaveLength(13);
  });

  it('tells file, row and column of a number that is none', () => {
    const [first] = readTable('units.csv');
    expect(() => first?.number('from')).toThrow('units.csv row 1 from');
  });

  it('will not leave an expected value uncomputed, nor compute what nobody expects', () => {
    const examples = readExamples('softening-worked-examples.json');
    expect(() => claimsOf(examples, 'S7', () => ({}))).toThrow('residual_K_meq');
    expect(() => claimsOf(examples, 'S7', () => ({ residual_K_meq: 0.1, other: 1 }))).toThrow('other');
  });

  it('follows a source that points to another example', () => {
    const examples = readExamples('units-brine-examples.json');
    expect(examples.get('U5')?.source).toBe(examples.get('U4')?.source);
  });
});
