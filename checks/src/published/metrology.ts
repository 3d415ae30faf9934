import {
  acceptanceLimit,
  combinedUncertainty,
  conformanceProbability,
  normalCdf,
  pailRate,
  rejectionLimit,
} from '@brinewright/physics';
import { numberIn, numbersIn } from '../json-access.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';
import { gallon, gallonPerMinute } from './us-units.ts';

const estimated = (inputs: unknown) => ({
  estimate: numberIn(inputs, 'estimate'),
  u: numberIn(inputs, 'u'),
  lower: numberIn(inputs, 'lower'),
});

const guardedAcceptance = ({ inputs }: Example) => {
  const limit = numberIn(inputs, 'limit_mg_L');
  const u = numberIn(inputs, 'u_mg_L');
  return {
    acceptance_limit_mg_L: acceptanceLimit('upper', { limit, u }),
    p_at_16: conformanceProbability({ estimate: 16, u, upper: limit }),
  };
};

const pail = ({ inputs }: Example) => {
  const rate = pailRate.compute({
    volume: numberIn(inputs, 'V_gal') * gallon,
    markHalfWidth: numberIn(inputs, 'V_half_width') * gallon,
    time: numberIn(inputs, 't_s'),
    timeUncertainty: numberIn(inputs, 'u_t_s'),
  });
  return {
    Q_gpm: rate.flow / gallonPerMinute,
    u_gpm: rate.flowUncertainty / gallonPerMinute,
    U95_gpm: rate.flowExpandedUncertainty / gallonPerMinute,
  };
};

const gauge = ({ inputs }: Example) => {
  const parts = numbersIn(inputs, 'components_nm');
  return {
    u_c_nm: combinedUncertainty(parts),
    u_c_with_second_order_nm: combinedUncertainty([...parts, numberIn(inputs, 'second_order_nm')]),
  };
};

/** Uncertainty, conformance and guarded limits. */
export const rows = (): readonly Claim[] => {
  const examples = readExamples('metrology-examples.json');
  return [
    ...claimsOf(examples, 'M1', ({ inputs }) => ({
      p: conformanceProbability({ ...estimated(inputs), upper: numberIn(inputs, 'upper') }),
    })),
    ...claimsOf(examples, 'M3', ({ inputs }) => ({ p: conformanceProbability(estimated(inputs)) })),
    ...claimsOf(examples, 'M4', ({ inputs }) => ({
      decision_limit: rejectionLimit('upper', {
        limit: numberIn(inputs, 'limit'),
        uRelative: numberIn(inputs, 'u_rel'),
        risk: normalCdf(-numberIn(inputs, 'z')),
      }),
    })),
    ...claimsOf(examples, 'M5', guardedAcceptance),
    ...claimsOf(examples, 'M6', gauge),
    ...claimsOf(examples, 'M7', pail),
  ];
};
