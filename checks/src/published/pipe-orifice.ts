import {
  celsiusZero,
  colebrook,
  jetPump,
  jetPumpDrive,
  orificeExpansibility,
  orificeFlow,
  orificePlate,
  pipeLoss,
  waterDensity,
  waterViscosity,
} from '@brinewright/physics';
import { listIn, numberIn } from '../json-access.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';
import { gallonPerMinute, inch, litrePerMinute, psi } from './us-units.ts';

const pipeOf = (inputs: unknown) => ({
  diameter: numberIn(inputs, 'D_m'),
  length: numberIn(inputs, 'L_m'),
  roughness: numberIn(inputs, 'roughness_m'),
});

const oilPipe = ({ inputs }: Example) => {
  const density = numberIn(inputs, 'rho');
  const loss = pipeLoss.compute({
    ...pipeOf(inputs),
    flow: numberIn(inputs, 'Q_m3_s'),
    density,
    viscosity: numberIn(inputs, 'nu') * density,
  });
  return {
    velocity_m_s: loss.velocity,
    Re: loss.reynolds,
    f: loss.frictionFactor,
    head_loss_m: loss.pressureLoss / (density * numberIn(inputs, 'g')),
  };
};

const waterPipe = ({ inputs }: Example) => {
  const temperature = numberIn(inputs, 't_C') + celsiusZero;
  const loss = pipeLoss.compute({
    ...pipeOf(inputs),
    flow: numberIn(inputs, 'Q_gpm') * gallonPerMinute,
    density: waterDensity.compute({ temperature }).density,
    viscosity: waterViscosity.compute({ temperature }).dynamicViscosity,
  });
  return {
    velocity_m_s: loss.velocity,
    Re: loss.reynolds,
    f: loss.frictionFactor,
    dP_kPa: loss.pressureLoss / 1000,
    dP_psi: loss.pressureLoss / psi,
  };
};

const friction = ({ inputs }: Example) => ({
  f: colebrook.compute({
    reynolds: numberIn(inputs, 'Re'),
    relativeRoughness: numberIn(inputs, 'relative_roughness'),
  }).frictionFactor,
});

const hole = ({ inputs }: Example) => {
  const { flow } = orificeFlow.compute({
    diameter: numberIn(inputs, 'd_in') * inch,
    pressureDrop: numberIn(inputs, 'dP_psi') * psi,
    dischargeCoefficient: numberIn(inputs, 'Cd'),
    density: numberIn(inputs, 'rho'),
  });
  return { gpm: flow / gallonPerMinute, L_min: flow / litrePerMinute };
};

/** The example applies the gas expansibility although its fluid is a liquid; so do we, for the comparison only. */
const plate = ({ inputs }: Example) => {
  const upstreamPressure = numberIn(inputs, 'P1_Pa');
  const downstreamPressure = numberIn(inputs, 'P2_Pa');
  const sizes = { pipeDiameter: numberIn(inputs, 'D_m'), diameter: numberIn(inputs, 'd_m') };
  const density = numberIn(inputs, 'rho');
  const { expansibility } = orificeExpansibility.compute({
    ...sizes,
    upstreamPressure,
    downstreamPressure,
    isentropicExponent: numberIn(inputs, 'isentropic_exponent'),
  });
  const { flow } = orificePlate.compute({
    ...sizes,
    expansibility,
    density,
    pressureDrop: upstreamPressure - downstreamPressure,
    viscosity: numberIn(inputs, 'mu'),
  });
  return { mass_flow_kg_s: flow * density };
};

const losses = (inputs: unknown) => ({
  nozzleLoss: numberIn(inputs, 'Kp'),
  suctionLoss: numberIn(inputs, 'Ks'),
  throatLoss: numberIn(inputs, 'Km'),
  diffuserLoss: numberIn(inputs, 'Kd'),
});

const pumpWithDensities = ({ inputs }: Example) => {
  const nozzle = numberIn(inputs, 'd_nozzle_m');
  const flow = numberIn(inputs, 'Qp_m3_s');
  const density = numberIn(inputs, 'rho_primary');
  const pump = {
    ...losses(inputs),
    areaRatio: (nozzle / numberIn(inputs, 'd_mixing_m')) ** 2,
    flowRatio: numberIn(inputs, 'Qs_m3_s') / flow,
    densityRatio: numberIn(inputs, 'rho_secondary') / density,
  };
  const { headRatio, efficiency } = jetPump.compute(pump);
  const drive = jetPumpDrive.compute({ ...pump, flow, density, nozzleArea: (Math.PI / 4) * nozzle ** 2 });
  return {
    R: pump.areaRatio,
    M: pump.flowRatio,
    N: headRatio,
    P1_Pa: numberIn(inputs, 'P2_Pa') + drive.pressureDrop,
    efficiency,
  };
};

const pumpCurve = ({ inputs, expected }: Example) => ({
  rows: listIn(expected, 'rows').map((row) => {
    const { headRatio, efficiency } = jetPump.compute({
      ...losses(inputs),
      areaRatio: numberIn(inputs, 'R'),
      densityRatio: numberIn(inputs, 'C'),
      flowRatio: numberIn(row, 'M'),
    });
    return { N: headRatio, efficiency };
  }),
});

/** Pipes, orifices and the liquid jet pump. */
export const rows = (): readonly Claim[] => {
  const examples = readExamples('pipe-orifice-examples.json');
  return [
    ...claimsOf(examples, 'P1', oilPipe),
    ...['P2', 'P3'].flatMap((id) => claimsOf(examples, id, waterPipe)),
    ...claimsOf(examples, 'P5', friction),
    ...['P6', 'P7'].flatMap((id) => claimsOf(examples, id, hole)),
    ...claimsOf(examples, 'P9', plate),
    ...claimsOf(examples, 'J1', pumpWithDensities),
    ...['J2', 'J3'].flatMap((id) => claimsOf(examples, id, pumpCurve, ['M'])),
  ];
};
