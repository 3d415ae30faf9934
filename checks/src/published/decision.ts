import {
  baseStock,
  bayesUpdate,
  bestRepairOrder,
  everyRepairOrder,
  newsvendorNormal,
  newsvendorPoisson,
  poissonCdf,
  type RepairAction,
  smallestStock,
} from '@brinewright/physics';
import { field, listIn, numberIn, textIn } from '../json-access.ts';
import { isObject } from '../read-data.ts';
import { claimsOf, type Example, readExamples } from '../read-examples.ts';
import type { Claim } from '../row.ts';

const actionOf = (value: unknown): RepairAction => {
  const cover = isObject(value) ? value.cluster : undefined;
  return {
    id: textIn(value, 'id'),
    p: numberIn(value, 'p'),
    cost: numberIn(value, 'cost'),
    ...(typeof cover === 'string' ? { cover } : {}),
  };
};

const actionsOf = (inputs: unknown): readonly RepairAction[] => listIn(inputs, 'actions').map(actionOf);

const freeOrder = ({ inputs }: Example) => {
  const actions = actionsOf(inputs);
  const best = bestRepairOrder(actions);
  const worst = everyRepairOrder(actions).at(-1);
  return {
    best_order: best.order,
    expected_cost: best.expectedCost,
    worst_order: worst?.order ?? [],
    worst_cost: worst?.expectedCost ?? Number.NaN,
  };
};

const coveredOrder = ({ inputs }: Example) => {
  const actions = actionsOf(inputs);
  const covers = { K: numberIn(field(inputs, 'open_cost'), 'K') };
  const best = bestRepairOrder(actions, covers);
  const second = everyRepairOrder(actions, covers)[1];
  return {
    best_order: best.order,
    expected_cost: best.expectedCost,
    second_best: second?.order ?? [],
    second_cost: second?.expectedCost ?? Number.NaN,
  };
};

const oneTest = ({ inputs }: Example) => {
  const { posteriorPositive, posteriorNegative } = bayesUpdate.compute({
    prior: numberIn(inputs, 'prior'),
    sensitivity: numberIn(inputs, 'sensitivity'),
    specificity: numberIn(inputs, 'specificity'),
  });
  return { posterior_positive: posteriorPositive, posterior_negative: posteriorNegative };
};

const normalOrder = ({ inputs }: Example) => {
  const { criticalRatio, order } = newsvendorNormal.compute({
    mean: numberIn(inputs, 'mean'),
    standardDeviation: numberIn(inputs, 'sd'),
    underage: numberIn(inputs, 'underage'),
    overage: numberIn(inputs, 'overage'),
  });
  return { critical_ratio: criticalRatio, order };
};

const poissonOrder = ({ inputs }: Example) => {
  const mean = numberIn(inputs, 'mean');
  const { order } = newsvendorPoisson.compute({ mean, criticalRatio: numberIn(inputs, 'critical_ratio') });
  return { order, cdf_4: poissonCdf(mean, 4), cdf_5: poissonCdf(mean, 5) };
};

const stockRows = ({ inputs, expected }: Example) => {
  const leadTimeDemand = numberIn(inputs, 'lead_time_demand');
  return {
    rows: listIn(expected, 'rows').map((row) => {
      const service = baseStock.compute({ leadTimeDemand, stock: numberIn(row, 'S') });
      return {
        fill_rate: service.fillRate,
        no_backorder_probability: service.noBackorder,
        expected_backorders: service.expectedBackorders,
      };
    }),
    smallest_S_for_95pct_fill: smallestStock(leadTimeDemand, 0.95),
  };
};

/** Orders of repair, Bayes and stock. */
export const rows = (): readonly Claim[] => {
  const examples = readExamples('decision-examples.json');
  return [
    ...claimsOf(examples, 'D1', freeOrder),
    ...claimsOf(examples, 'D3', coveredOrder),
    ...claimsOf(examples, 'D5', oneTest),
    ...claimsOf(examples, 'D6', normalOrder),
    ...claimsOf(examples, 'D7', poissonOrder),
    ...claimsOf(examples, 'D8', stockRows, ['S']),
  ];
};
