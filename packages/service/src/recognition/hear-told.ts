import type { Situation } from '../situation/situation.ts';
import { stockIds } from '../stock-ids.ts';
import { type Heard, nothingHeard, wrongAgainstRight } from './evidence.ts';
import { unknownValue } from './hear-issues.ts';
import { variantSpace } from './variant-space.ts';

/** What somebody said or papers say of a feature is right this often; common practice, no source. */
const toldTrust = 0.8;

const fittedFeatures = ['controller', 'drain', 'injector', 'meter', 'refill'] as const;

/** Softener or filter is plain to see on any unit, and the visit says which. */
const kindTrust = 0.99;
const kindFeature = stockIds.features.build;

type Told = {
  readonly feature: string;
  readonly value: string;
  readonly in: 'believed' | 'fitted' | 'kind';
  readonly trust: number;
};

/** What is believed, what is fitted by id where the family has such a feature (fitted wins), and the kind of unit. */
export const hearTold = (s: Situation): Heard => {
  const heard = toldOf(s).map((told) => hearFeature(s, told));
  return { evidence: heard.flatMap((h) => h.evidence), issues: heard.flatMap((h) => h.issues) };
};

const toldOf = ({ subject, family }: Situation): readonly Told[] => {
  const fitted: readonly Told[] = fittedFeatures.flatMap((feature) => {
    const value = subject.fitted?.[feature];
    const isFeature = family.features.some(({ id }) => id === feature);
    return value === undefined || !isFeature ? [] : [{ feature, value, in: 'fitted', trust: toldTrust }];
  });
  const believed: readonly Told[] = Object.entries(subject.believed ?? {})
    .filter(([feature]) => !fitted.some((told) => told.feature === feature))
    .map(([feature, value]) => ({ feature, value, in: 'believed', trust: toldTrust }));
  const kind: readonly Told[] = family.features
    .filter(({ id, values }) => id === kindFeature && values.some((value) => value.id === subject.kind))
    .map(({ id }) => ({ feature: id, value: subject.kind, in: 'kind', trust: kindTrust }));
  return [...fitted, ...believed, ...kind];
};

const hearFeature = (s: Situation, told: Told): Heard => {
  const values = s.family.features.find(({ id }) => id === told.feature)?.values.map(({ id }) => id) ?? [];
  if (!values.includes(told.value))
    return { evidence: [], issues: [unknownValue(s, told.feature, told.value, told.in, values)] };
  if (values.length < 2) return nothingHeard;
  const { variants } = variantSpace(s.family);
  const denied = Uint8Array.from(variants, (variant) => (variant[told.feature] === told.value ? 0 : 1));
  const other = (1 - told.trust) / (values.length - 1);
  const likelihood = Float64Array.from(denied, (no) => (no === 1 ? other : told.trust));
  const is = { from: 'told', feature: told.feature, answer: told.value } as const;
  return { evidence: [{ is, likelihood, denied, wrong: wrongAgainstRight(told.trust) }], issues: [] };
};
