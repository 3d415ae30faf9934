import { quantity } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { openLedger } from './ledger.ts';
import { measureFirst } from './measure-first.ts';

const length = (metres: number) => quantity('length', metres);

const figures = (() => {
  const ledger = openLedger();
  ledger.assume('wall', length(0.006), 'ours', 0.002);
  ledger.assume('grain', length(0.0006), 'ours', 0.0001);
  ledger.given('girth', { value: length(1.2), how: 'measured', u: length(0.001) });
  ledger.choose('across', length(0.37), 'same', { from: 'wall' }, { as: 'wall' });
  ledger.choose('floor', length(0.1), 'same', { from: 'grain' }, { as: 'grain' });
  ledger.choose('ceiling', length(0.2), 'same', { from: 'grain' }, { as: 'grain' });
  ledger.choose('told', length(1), 'same', { from: 'girth' }, { as: 'girth' });
  return ledger.figures();
})();

describe('what to measure first', () => {
  it('gathers figures by the assumption they lean on, in the order asked', () => {
    expect(measureFirst(figures, ['floor', 'across', 'ceiling'])).toEqual([
      { assumption: 'grain', figures: ['floor', 'ceiling'] },
      { assumption: 'wall', figures: ['across'] },
    ]);
  });

  it('leaves out what leans on a measurement, what is not there and what is asked twice', () => {
    expect(measureFirst(figures, ['told', 'nowhere', 'toString', 'across', 'across'])).toEqual([
      { assumption: 'wall', figures: ['across'] },
    ]);
  });
});
