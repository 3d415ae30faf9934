import { describe, expect, it } from 'vitest';
import { table } from './table.ts';

describe('table', () => {
  it('sets columns as wide as their content, figures to the right', () => {
    expect(
      table(
        [{ title: 'Step' }, { title: 'Set', align: 'right' }],
        [{ cells: ['Backwash', '10 min'] }, { cells: ['Refill', '5 min'], under: ['5 min: 22 lb'] }],
      ),
    ).toEqual(['Step         Set', 'Backwash  10 min', 'Refill     5 min', '    5 min: 22 lb']);
  });

  it('wraps the column that gives before any other', () => {
    const lines = table(
      [{ title: '' }, { title: '', gives: true }],
      [{ cells: ['a name of some length', 'one two three four five six'] }],
      44,
    );
    expect(lines).toEqual(['a name of some length  one two three four', '                       five six']);
  });
});
