import { requirePositive } from '../meta/assert.ts';
import { equation } from '../meta/equation.ts';
import { circle } from '../vessel/circle.ts';

type Plate = { readonly pipeDiameter: number; readonly diameter: number };

const diameterRatio = (plate: Plate): number => plate.diameter / plate.pipeDiameter;

/** Places of the taps, in pipe diameters: one ahead of the plate, a half behind it less the plate itself. */
const taps = { upstream: 1, downstream: 0.47 } as const;

/** Reader-Harris/Gallagher (1998): bore, Reynolds number, taps ahead and behind, and small pipes. */
const dischargeCoefficient = (plate: Plate, reynolds: number): number => {
  const beta = diameterRatio(plate);
  const slow = ((19000 * beta) / reynolds) ** 0.8;
  const bore = 0.5961 + 0.0261 * beta ** 2 - 0.216 * beta ** 8;
  const viscous =
    0.000521 * ((1e6 * beta) / reynolds) ** 0.7 +
    (0.0188 + 0.0063 * slow) * beta ** 3.5 * (1e6 / reynolds) ** 0.3;
  return bore + viscous + tapTerm(beta, slow) + smallPipeTerm(beta, plate.pipeDiameter);
};

const tapTerm = (beta: number, slow: number): number => {
  const ahead = 0.043 + 0.08 * Math.exp(-10 * taps.upstream) - 0.123 * Math.exp(-7 * taps.upstream);
  const dam = (2 * taps.downstream) / (1 - beta);
  return (
    ahead * (1 - 0.11 * slow) * (beta ** 4 / (1 - beta ** 4)) - 0.031 * (dam - 0.8 * dam ** 1.1) * beta ** 1.3
  );
};

const smallPipeTerm = (beta: number, pipeDiameter: number): number =>
  0.011 * (0.75 - beta) * Math.max(0, 2.8 - pipeDiameter / 0.0254);

const pipeReynolds = (
  plate: Plate & { readonly density: number; readonly viscosity: number },
  flow: number,
): number => (4 * plate.density * flow) / (Math.PI * plate.pipeDiameter * plate.viscosity);

/**
 * Flow through an orifice plate with taps one diameter ahead and half a diameter behind.
 *
 * $$ Q = \frac{C\,\epsilon}{\sqrt{1-\beta^4}}\,\frac{\pi d^2}{4}\sqrt{2\Delta P/\rho},\qquad \beta = d/D $$
 *
 * with C after Reader-Harris and Gallagher, found together with the Reynolds number. Expansibility 1 for a liquid.
 * Valid d ≥ 12.5 mm, 0.05 ≤ D ≤ 1 m, 0.1 ≤ β ≤ 0.75, Re ≥ 5000 and, above β 0.56, Re ≥ 16000 β², ΔP ≤ 250 kPa.
 * Outside: the value, and `evaluate` adds the issue.
 * Source: ISO 5167-2:2003, second hand. Checked: checks/src/published/pipe-orifice.ts (P9).
 * @throws RangeError on a non-finite or non-positive argument, or a bore as wide as the pipe.
 * @example
 * ```ts
 * orificePlate.compute({ pipeDiameter: 0.07366, diameter: 0.05, pressureDrop: 17000, density: 999.1, viscosity: 0.0011, expansibility: 1 }).flow // => 0.00793706
 * ```
 */
export const orificePlate = equation(
  {
    key: 'orifice-plate',
    title: 'equation.orifice-plate',
    words: 'formula.orifice-plate',
    inputs: {
      pipeDiameter: { symbol: 'D', kind: 'length' },
      diameter: { symbol: 'd', kind: 'length' },
      pressureDrop: { symbol: 'ΔP', kind: 'pressure' },
      density: { symbol: 'ρ', kind: 'density' },
      viscosity: { symbol: 'μ', kind: 'dynamic-viscosity' },
      expansibility: { symbol: 'ϵ', kind: 'ratio' },
    },
    outputs: {
      flow: { symbol: 'Q', kind: 'flow' },
      dischargeCoefficient: { symbol: 'C', kind: 'ratio' },
      reynolds: { symbol: 'Re_D', kind: 'ratio' },
    },
    range: [
      { of: 'symbol.diameter', kind: 'length', min: 0.0125, value: ({ diameter }) => diameter },
      {
        of: 'symbol.pipe-diameter',
        kind: 'length',
        min: 0.05,
        max: 1,
        value: ({ pipeDiameter }) => pipeDiameter,
      },
      { of: 'symbol.diameter-ratio', kind: 'ratio', min: 0.1, max: 0.75, value: diameterRatio },
      { of: 'symbol.reynolds', kind: 'ratio', min: 5000, value: (_plate, { reynolds }) => reynolds },
      {
        of: 'symbol.reynolds-over-bore',
        kind: 'ratio',
        min: 16000,
        value: (plate, { reynolds }) =>
          diameterRatio(plate) > 0.56 ? reynolds / diameterRatio(plate) ** 2 : 16000,
      },
      { of: 'symbol.pressure-drop', kind: 'pressure', max: 250e3, value: ({ pressureDrop }) => pressureDrop },
    ],
    source: 'iso-5167-2',
    status: 'second-hand',
  },
  (plate) => {
    requirePositive('diameter', plate.diameter);
    requirePositive('pipeDiameter less diameter', plate.pipeDiameter - plate.diameter);
    requirePositive('pressureDrop', plate.pressureDrop);
    requirePositive('density', plate.density);
    requirePositive('viscosity', plate.viscosity);
    requirePositive('expansibility', plate.expansibility);
    const approach = Math.sqrt(1 - diameterRatio(plate) ** 4);
    const ideal =
      (plate.expansibility * circle(plate.diameter) * Math.sqrt((2 * plate.pressureDrop) / plate.density)) /
      approach;
    return settleFlow(plate, ideal);
  },
);

type PlateFlow = { readonly flow: number; readonly dischargeCoefficient: number; readonly reynolds: number };

/** C depends so weakly on Re that putting it back settles in a few turns. */
const settleFlow = (
  plate: Plate & { readonly density: number; readonly viscosity: number },
  ideal: number,
): PlateFlow => {
  let coefficient = 0.6;
  for (let turn = 0; turn < 100; turn++) {
    const next = dischargeCoefficient(plate, pipeReynolds(plate, coefficient * ideal));
    const settled = Math.abs(next - coefficient) <= 1e-15;
    coefficient = next;
    if (settled) break;
  }
  const flow = coefficient * ideal;
  return { flow, dischargeCoefficient: coefficient, reynolds: pipeReynolds(plate, flow) };
};

/**
 * How much a gas thins out in passing an orifice plate; 1 for a liquid.
 *
 * $$ \epsilon = 1 - (0.351 + 0.256\beta^4 + 0.93\beta^8)\left[1 - (p_2/p_1)^{1/\kappa}\right] $$
 *
 * Valid p₂/p₁ ≥ 0.75. Source: ISO 5167-2:2003, second hand. Checked: checks/src/published/pipe-orifice.ts (P9).
 * @throws RangeError on a non-finite or non-positive argument.
 * @example
 * ```ts
 * orificeExpansibility.compute({ pipeDiameter: 0.07366, diameter: 0.05, upstreamPressure: 200000, downstreamPressure: 183000, isentropicExponent: 1.33 }).expansibility // => 0.971103
 * ```
 */
export const orificeExpansibility = equation(
  {
    key: 'orifice-expansibility',
    title: 'equation.orifice-expansibility',
    words: 'formula.orifice-expansibility',
    inputs: {
      pipeDiameter: { symbol: 'D', kind: 'length' },
      diameter: { symbol: 'd', kind: 'length' },
      upstreamPressure: { symbol: 'p₁', kind: 'pressure' },
      downstreamPressure: { symbol: 'p₂', kind: 'pressure' },
      isentropicExponent: { symbol: 'κ', kind: 'ratio' },
    },
    outputs: { expansibility: { symbol: 'ϵ', kind: 'ratio' } },
    range: [
      {
        of: 'symbol.pressure-ratio',
        kind: 'ratio',
        min: 0.75,
        value: ({ upstreamPressure, downstreamPressure }) => downstreamPressure / upstreamPressure,
      },
    ],
    source: 'iso-5167-2',
    status: 'second-hand',
  },
  (plate) => {
    requirePositive('diameter', plate.diameter);
    requirePositive('pipeDiameter less diameter', plate.pipeDiameter - plate.diameter);
    requirePositive('upstreamPressure', plate.upstreamPressure);
    requirePositive('downstreamPressure', plate.downstreamPressure);
    requirePositive('isentropicExponent', plate.isentropicExponent);
    const beta = diameterRatio(plate);
    const kept = (plate.downstreamPressure / plate.upstreamPressure) ** (1 / plate.isentropicExponent);
    return { expansibility: 1 - (0.351 + 0.256 * beta ** 4 + 0.93 * beta ** 8) * (1 - kept) };
  },
);
