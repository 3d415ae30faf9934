import { expect, it } from 'vitest';
import { colebrook, pipeFriction } from './friction.ts';
import { pipeLoss } from './pipe-loss.ts';

it('solves Colebrook to the last digits over the whole chart', () => {
  for (const reynolds of [1, 100, 4000, 1e5, 1e8])
    for (const relativeRoughness of [0, 1e-6, 1e-3, 0.05]) {
      const { frictionFactor } = colebrook.compute({ reynolds, relativeRoughness });
      const x = 1 / Math.sqrt(frictionFactor);
      const inside = relativeRoughness / 3.7 + (2.51 * x) / reynolds;
      expect(Math.abs(x + 2 * Math.log10(inside)) / x).toBeLessThan(2e-15);
    }
});

it('names the regime and joins its ends without a step', () => {
  const at = (reynolds: number) => pipeFriction({ reynolds, relativeRoughness: 1e-3 });
  expect([1999, 3000, 4001].map((reynolds) => at(reynolds).regime)).toEqual([
    'laminar',
    'between',
    'turbulent',
  ]);
  expect(at(2000.001).frictionFactor).toBeCloseTo(at(1999.999).frictionFactor, 6);
  expect(at(3999.999).frictionFactor).toBeCloseTo(at(4000.001).frictionFactor, 6);
});

it('follows Hagen and Poiseuille when slow: 128 μ L Q / (π D⁴)', () => {
  const slow = { flow: 1e-6, diameter: 0.01, length: 3, roughness: 1e-6, density: 998, viscosity: 1e-3 };
  const expected = (128 * slow.viscosity * slow.length * slow.flow) / (Math.PI * slow.diameter ** 4);
  expect(pipeLoss.compute(slow).pressureLoss / expected).toBeCloseTo(1, 12);
});
