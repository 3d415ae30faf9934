import { type DiagnosisTest, strengths } from '@brinewright/equipment';
import { noneOfThese } from './diagnosis.ts';
import type { Distribution, Predictor } from './predictor.ts';

/** A fault that a test does not list leaves it at its normal outcome this often; common practice. */
const unlistedNormal = 0.9;

/** What nobody listed may show anything; ours. */
const noneNormal = 0.5;

/** Left for the other outcomes where the listed ones claim everything; ours. */
const leastLeft = 0.03;

const kept = new WeakMap<DiagnosisTest, Map<string, Distribution>>();

/**
 * Stated odds of a definition: each outcome lists the faults that make it sure, likely, possible or hardly.
 *
 * A fault's listed outcomes take their strengths. What they leave goes nine parts in ten to the normal outcome and
 * else evenly to the outcomes not listed; listed strengths that add up to more than 1 share 0.97. A fault listed
 * nowhere: normal 0.9. 'none-of-these': normal 0.5. All of it is common practice, no source.
 */
export const statedOdds: Predictor = {
  version: 'stated-odds/1',
  predict: (fault, test) => {
    const byFault = kept.get(test) ?? new Map<string, Distribution>();
    kept.set(test, byFault);
    const known = byFault.get(fault) ?? stated(fault, test);
    byFault.set(fault, known);
    return known;
  },
};

const stated = (fault: string, test: DiagnosisTest): Distribution => {
  const listed = test.outcomes.map(({ faults }): number => {
    const strength = fault === noneOfThese ? undefined : faults[fault];
    return strength === undefined ? 0 : strengths[strength];
  });
  const claimed = listed.reduce((total, p) => total + p, 0);
  const rest = sharesOfRest(test, listed, fault === noneOfThese ? noneNormal : unlistedNormal);
  const open = rest.some((share) => share > 0);
  const left = open ? Math.max(1 - claimed, leastLeft) : 0;
  const scale = claimed > 0 ? (1 - left) / claimed : 0;
  return Float64Array.from(listed, (p, o) => p * scale + left * (rest[o] ?? 0));
};

/** How the outcomes that the fault does not list share what is left: mostly the normal one, if it is among them. */
const sharesOfRest = (
  test: DiagnosisTest,
  listed: readonly number[],
  normalShare: number,
): readonly number[] => {
  const isNormal = test.outcomes.map(({ id }) => id === test.normal);
  const others = listed.filter((p, o) => p === 0 && isNormal[o] !== true).length;
  const normalOpen = listed.some((p, o) => p === 0 && isNormal[o] === true);
  const normal = !normalOpen ? 0 : others === 0 ? 1 : normalShare;
  return listed.map((p, o) => {
    if (p > 0) return 0;
    return isNormal[o] === true ? normal : (1 - normal) / others;
  });
};
