import { refillTime, saltSolubility } from '@brinewright/physics';
import { fromUnit, quantity } from '@brinewright/units';
import { expect, it } from 'vitest';
import { evaluate } from './evaluate.ts';

it('computes every output of an equation', () => {
  const { outputs, issues } = evaluate(refillTime, {
    refillWater: fromUnit(3, 'gal', 'volume'),
    refillFlow: fromUnit(0.5, 'gpm', 'flow'),
  });
  expect(outputs.refillTime?.quantity.si).toBeCloseTo(360, 9);
  expect(issues).toEqual([]);
});

it('says where an input leaves the tested range', () => {
  const { issues } = evaluate(saltSolubility, { temperature: quantity('temperature', 420) });
  expect(issues.map(({ code }) => code)).toEqual(['out-of-range']);
});

it('gives no output and an issue where the equation cannot take the inputs', () => {
  const { outputs, issues } = evaluate(refillTime, {
    refillWater: quantity('volume', 0.01),
    refillFlow: quantity('flow', 0),
  });
  expect(outputs).toEqual({});
  expect(issues.map(({ code }) => code)).toEqual(['cannot-compute']);
});
