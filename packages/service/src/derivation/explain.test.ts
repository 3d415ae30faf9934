import { refillTime, stepVolume } from '@brinewright/physics';
import { quantity } from '@brinewright/units';
import { expect, it } from 'vitest';
import { explain } from './explain.ts';
import { openLedger } from './ledger.ts';

const figures = () => {
  const ledger = openLedger();
  ledger.given('flow', { value: quantity('flow', 1e-4), how: 'measured' });
  ledger.assume('water', quantity('volume', 0.03), 'ours');
  ledger.derive(refillTime, { refillWater: 'water', refillFlow: 'flow' }, { refillTime: 'time' });
  ledger.derive(stepVolume, { stepFlow: 'flow', stepTime: 'time' }, { stepVolume: 'again' });
  return ledger.figures();
};

it('opens a figure down to what was measured and assumed, by the names of the equations', () => {
  const tree = explain(figures(), 'time');
  expect(tree?.figure.quantity.si).toBeCloseTo(300, 9);
  expect(tree?.inputs.map(({ name, figure }) => [name, figure.id])).toEqual([
    ['refillFlow', 'flow'],
    ['refillWater', 'water'],
  ]);
});

it('opens what is met twice only once', () => {
  const twice = { ...figures() };
  const again = twice.again;
  if (again === undefined) throw new Error('no figure');
  const tree = explain(
    { ...twice, both: { ...again, id: 'both', inputs: { first: 'time', second: 'time' } } },
    'both',
  );
  expect(tree?.inputs.map((one) => [one.again, one.inputs.length])).toEqual([
    [false, 2],
    [true, 0],
  ]);
});

it('has nothing to say of a figure that is not there', () => {
  expect(explain(figures(), 'toString')).toBeUndefined();
});
