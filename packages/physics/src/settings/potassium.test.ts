import { expect, it } from 'vitest';
import { equivalentDose, potassiumDose, potassiumEquivalence } from './potassium.ts';

it('counts potassium chloride by its molar mass', () => {
  // 58.443 g/mol and 74.551 g/mol (IUPAC atomic weights), by hand
  expect(potassiumEquivalence).toBeCloseTo(58.443 / 74.551, 4);
});

it('gives back the dose it was made from', () => {
  const { equivalentDose: counted } = equivalentDose.compute({
    saltDose: 160,
    saltEquivalence: potassiumEquivalence,
  });
  expect(counted).toBeLessThan(160);
  const { saltDose } = potassiumDose.compute({
    equivalentDose: counted,
    saltEquivalence: potassiumEquivalence,
  });
  expect(saltDose).toBeCloseTo(160, 9);
});
