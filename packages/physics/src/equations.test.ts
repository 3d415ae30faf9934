import { isQuantityKind, type QuantityKind } from '@brinewright/units';
import { english, spanish } from '@brinewright/words';
import { describe, expect, it } from 'vitest';
import { equations } from './equations.ts';
import type { Equation } from './meta/equation.ts';
import { sources } from './meta/sources.ts';
import { symbolName } from './meta/symbol-name.ts';

/** A value of each kind that a light-commercial softener could show. */
const typical: Partial<Record<QuantityKind, number>> = {
  length: 0.6,
  area: 0.2,
  volume: 0.06,
  mass: 8,
  time: 1200,
  flow: 5e-5,
  'superficial-velocity': 3.4e-3,
  'bed-volumes': 1.5,
  temperature: 293.15,
  pressure: 3e5,
  'pressure-gradient': 2e4,
  density: 1100,
  'dynamic-viscosity': 1e-3,
  'kinematic-viscosity': 1e-6,
  hardness: 6,
  'equivalent-concentration': 2,
  concentration: 0.05,
  'salt-dose': 130,
  capacity: 1000,
  exchange: 50,
  'salt-efficiency': 8,
  'hardness-per-metal': 1368,
  'water-per-exchange': 0.008,
  'mass-fraction': 0.15,
  salometer: 0.5,
  conductivity: 0.06,
  ratio: 1.5,
  share: 0.4,
  count: 3,
  ph: 7.2,
  money: 20,
  'price-mass': 0.3,
  'price-volume': 2,
  'price-time': 0.02,
};

/** Where the value of the kind would make no sense beside the others. */
const named: Readonly<Record<string, number>> = {
  remainingHardness: 1,
  wantedHardness: 2,
  leakage: 0.1,
  saturation: 0.264,
  dissolvedIon: 5,
  saltPerWater: 358,
  otherTemperature: 298.15,
  loadingRate: 4e-3,
  serviceVolume: 8,
  reserve: 2,
  voidage: 0.38,
  settledVoidage: 0.38,
  sphericity: 0.9,
  particleDensity: 1280,
  waterDensity: 999,
  areaRatio: 0.25,
  diameter: 0.02,
  pipeDiameter: 0.05,
  girth: 1.3,
  wallThickness: 6e-3,
  prior: 0.3,
  sensitivity: 0.9,
  specificity: 0.8,
  criticalRatio: 0.75,
};

const sampleOf = (name: string, kind: QuantityKind): number => {
  const value = named[name] ?? typical[kind];
  if (value === undefined) throw new Error(`no typical ${kind} for ${name}`);
  return value;
};

const inputsOf = ({ meta }: Equation): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(meta.inputs).map(([name, { kind }]) => [name, sampleOf(name, kind)] as const),
  );

describe.each(equations.map((equation) => [equation.meta.key, equation] as const))('%s', (_key, equation) => {
  const { meta } = equation;
  const variables = [...Object.entries(meta.inputs), ...Object.entries(meta.outputs)];

  it('has a title, a formula in words and a name for each variable in both languages', () => {
    const keys = [meta.title, meta.words, ...variables.map(([name]) => symbolName(name))];
    for (const catalogue of [english, spanish]) {
      expect(keys.filter((key) => !Object.hasOwn(catalogue, key))).toEqual([]);
    }
  });

  it('declares a known kind for each variable and a known source', () => {
    expect(variables.filter(([, { kind }]) => !isQuantityKind(kind))).toEqual([]);
    expect(Object.hasOwn(sources, meta.source)).toBe(true);
  });

  it('gives finite numbers for a usual softener, and just the outputs it declares', () => {
    const outputs = equation.compute(inputsOf(equation));
    expect(Object.keys(outputs).sort()).toEqual(Object.keys(meta.outputs).sort());
    expect(Object.values(outputs).every(Number.isFinite)).toBe(true);
  });

  it('judges its range with finite numbers', () => {
    const inputs = inputsOf(equation);
    const outputs = equation.compute(inputs);
    expect(meta.range.every((rule) => Number.isFinite(rule.value(inputs, outputs)))).toBe(true);
  });

  it('throws on a value that is no number', () => {
    const inputs = inputsOf(equation);
    for (const name of Object.keys(meta.inputs)) {
      expect(() => equation.compute({ ...inputs, [name]: Number.NaN })).toThrow(RangeError);
    }
  });
});

describe('the list of equations', () => {
  it('names each equation once', () => {
    const keys = equations.map(({ meta }) => meta.key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
