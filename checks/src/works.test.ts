import { expect, it } from 'vitest';
import { workOf } from './works.ts';

it('counts two examples of one book as one work', () => {
  const first = workOf('M. L. Davis, Water and Wastewater Engineering, Example 8-1, p. 8-9');
  expect(first).toBeDefined();
  expect(workOf('M. L. Davis, Water and Wastewater Engineering, Example 8-4, p. 8-23')).toBe(first);
});

it('counts neither definitions nor geometry of our own', () => {
  expect(workOf('elementary')).toBeUndefined();
  expect(workOf('valve-geometry-example.json: invented geometry')).toBeUndefined();
});
