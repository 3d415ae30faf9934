import {
  celsiusZero,
  ergun,
  ergunConstants,
  ergunWithConstants,
  expansionErgun,
  expansionRichardsonZaki,
  richardsonZakiExponent,
  roseGraded,
  sieveAnalysis,
  terminalVelocity,
  waterDensity,
  waterViscosity,
  wenYu,
} from '@brinewright/physics';
import { listIn, numberIn, numbersIn } from '../json-access.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';
import { gallonPerMinuteFoot2, psi } from './us-units.ts';

const waterAt = (celsius: number): { readonly density: number; readonly viscosity: number } => ({
  density: waterDensity.compute({ temperature: celsius + celsiusZero }).density,
  viscosity: waterViscosity.compute({ temperature: celsius + celsiusZero }).dynamicViscosity,
});

const grains = ({ inputs }: Example) => ({
  diameter: numberIn(inputs, 'd_m'),
  particleDensity: numberIn(inputs, 'particle_density_kg_m3'),
});

const rowsOf = ({ expected }: Example): readonly unknown[] => listIn(expected, 'rows');

const ergunRows = (example: Example) => {
  const { inputs } = example;
  const constants = ergunConstants.compute({ sphericity: numberIn(inputs, 'sphericity') });
  return {
    rows: rowsOf(example).map((row) => {
      const { expandedVoidage, expansion } = expansionErgun.compute({
        ...grains(example),
        ...waterAt(numberIn(row, 't_C')),
        ...constants,
        voidage: numberIn(inputs, 'fixed_porosity'),
        superficialVelocity: numberIn(inputs, 'upflow_gpm_ft2') * gallonPerMinuteFoot2,
      });
      return { expanded_porosity: expandedVoidage, expansion_percent: expansion * 100 };
    }),
  };
};

/** The exponents are from memory, ours and the example's alike: only the sinking bead is evidence. */
const withoutMemory = (claim: Claim): Claim =>
  /terminal_velocity|Re_t/.test(claim.id) ? claim : { ...claim, notCounted: 'exponents-from-memory' };

const richardsonZakiRows = (example: Example) => ({
  rows: rowsOf(example).map((row) => {
    const grain = { ...grains(example), ...waterAt(numberIn(row, 't_C')) };
    const fall = terminalVelocity.compute(grain);
    const { expandedVoidage, expansion } = expansionRichardsonZaki.compute({
      ...grain,
      voidage: numberIn(example.inputs, 'fixed_porosity'),
      superficialVelocity: numberIn(example.inputs, 'upflow_gpm_ft2') * gallonPerMinuteFoot2,
    });
    return {
      terminal_velocity_m_s: fall.terminalVelocity,
      Re_t: fall.reynolds,
      n: richardsonZakiExponent.compute({ reynolds: fall.reynolds }).exponent,
      expanded_porosity: expandedVoidage,
      expansion_percent: expansion * 100,
    };
  }),
});

/** Head of water: the example's own g, so that it is the book's and not ours that is compared. */
const ergunHead = ({ inputs }: Example) => {
  const density = numberIn(inputs, 'rho');
  const head = numberIn(inputs, 'depth_m') / (density * numberIn(inputs, 'g'));
  const gradient = ergunWithConstants.compute({
    diameter: numberIn(inputs, 'd_m'),
    voidage: numberIn(inputs, 'porosity'),
    superficialVelocity: numberIn(inputs, 'rate_m_h') / 3600,
    density,
    viscosity: numberIn(inputs, 'mu'),
    viscousConstant: numberIn(inputs, 'kV'),
    inertialConstant: numberIn(inputs, 'kI'),
  });
  return {
    viscous_m: gradient.viscousGradient * head,
    inertial_m: gradient.inertialGradient * head,
    total_m: gradient.pressureGradient * head,
  };
};

const roseHead = ({ inputs }: Example) => {
  const density = 1000;
  const gradient = roseGraded({
    superficialVelocity: numberIn(inputs, 'velocity_m_s'),
    density,
    voidage: numberIn(inputs, 'porosity'),
    sphericity: numberIn(inputs, 'shape'),
    dragOverDiameter: numberIn(inputs, 'sum_CD_f_over_d_per_m'),
  });
  return { head_loss_m: (gradient * numberIn(inputs, 'depth_m')) / (density * numberIn(inputs, 'g')) };
};

const ergunLoss = ({ inputs }: Example): number =>
  ergun.compute({
    diameter: numberIn(inputs, 'd_m'),
    voidage: numberIn(inputs, 'porosity'),
    superficialVelocity: numberIn(inputs, 'velocity_m_s'),
    density: numberIn(inputs, 'rho'),
    viscosity: numberIn(inputs, 'mu'),
  }).pressureGradient * numberIn(inputs, 'L_m');

const lifting = (example: Example) => {
  const { archimedes, reynolds, superficialVelocity } = wenYu.compute({
    ...grains(example),
    ...waterAt(numberIn(example.inputs, 't_C')),
  });
  return {
    Ar: archimedes,
    Re_mf: reynolds,
    u_mf_mm_s: superficialVelocity * 1000,
    u_mf_gpm_ft2: superficialVelocity / gallonPerMinuteFoot2,
  };
};

const sieves = ({ inputs }: Example) => {
  const retained = numbersIn(inputs, 'retained_g');
  const analysis = sieveAnalysis(
    numbersIn(inputs, 'opening_mm').map((opening, place) => ({
      opening,
      retained: retained[place] ?? Number.NaN,
    })),
  );
  const passing = (wanted: number): number =>
    analysis.curve.find(({ opening }) => opening === wanted)?.passing ?? Number.NaN;
  return {
    passing_at_1_7: passing(1.7),
    passing_at_1_4: passing(1.4),
    passing_at_1_18: passing(1.18),
    d10_mm: analysis.d10 ?? Number.NaN,
    d60_mm: analysis.d60 ?? Number.NaN,
    uniformity: analysis.uniformity ?? Number.NaN,
  };
};

/** Packed and expanded beds. */
export const rows = (): readonly Claim[] => {
  const examples = readExamples('expansion-examples.json');
  return [
    ...['X1', 'X3', 'X4'].flatMap((id) => claimsOf(examples, id, ergunRows, ['t_C'])),
    ...claimsOf(examples, 'X7', ergunHead),
    ...claimsOf(examples, 'X8', roseHead),
    ...claimsOf(examples, 'X9', (example) => ({ dP_Pa: ergunLoss(example) })),
    ...claimsOf(examples, 'X10', (example) => ({
      dP_Pa: ergunLoss(example),
      dP_psi: ergunLoss(example) / psi,
    })),
    ...claimsOf(examples, 'X11', richardsonZakiRows, ['t_C']).map(withoutMemory),
    ...claimsOf(examples, 'X12', lifting),
    ...claimsOf(examples, 'X13', lifting),
    ...claimsOf(examples, 'X15', sieves),
  ];
};
