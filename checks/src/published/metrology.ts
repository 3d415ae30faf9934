import {
  acceptanceLimit,
  combinedUncertainty,
  conformanceProbability,
  normalCdf,
  pailRate,
  rejectionLimit,
} from '@brinewright/physics';
import { numberIn, numbersIn } from '../json-access.ts';
import { type NestedExample, nestedClaims, readNested } from '../nested-examples.ts';
import type { Claim } from '../row.ts';
import { gallonPerMinute } from './us-units.ts';

const gallon = gallonPerMinute * 60;

const estimated = (inputs: unknown) => ({
  estimate: numberIn(inputs, 'estimate'),
  u: numberIn(inputs, 'u'),
  lower: numberIn(inputs, 'lower'),
});

const guardedAcceptance = ({ inputs }: NestedExample) => {
  const limit = numberIn(inputs, 'limit_mg_L');
  const u = numberIn(inputs, 'u_mg_L');
  return {
    acceptance_limit_mg_L: acceptanceLimit('upper', { limit, u }),
    p_at_16: conformanceProbability({ estimate: 16, u, upper: limit }),
  };
};

const pail = ({ inputs }: NestedExample) => {
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

const gauge = ({ inputs }: NestedExample) => {
  const parts = numbersIn(inputs, 'components_nm');
  return {
    u_c_nm: combinedUncertainty(parts),
    u_c_with_second_order_nm: combinedUncertainty([...parts, numberIn(inputs, 'second_order_nm')]),
  };
};

/** Uncertainty, conformance and guarded limits. */
export const rows = (): readonly Claim[] => {
  const examples = readNested('metrology-examples.json');
  return [
    ...nestedClaims(examples, 'M1', ({ inputs }) => ({
      p: conformanceProbability({ ...estimated(inputs), upper: numberIn(inputs, 'upper') }),
    })),
    ...nestedClaims(examples, 'M3', ({ inputs }) => ({ p: conformanceProbability(estimated(inputs)) })),
    ...nestedClaims(examples, 'M4', ({ inputs }) => ({
      decision_limit: rejectionLimit('upper', {
        limit: numberIn(inputs, 'limit'),
        uRelative: numberIn(inputs, 'u_rel'),
        risk: normalCdf(-numberIn(inputs, 'z')),
      }),
    })),
    ...nestedClaims(examples, 'M5', guardedAcceptance),
    ...nestedClaims(examples, 'M6', gauge),
    ...nestedClaims(examples, 'M7', pail),
  ];
};
