import type { DiagnosisTest, Outcome } from '@brinewright/equipment';
import { normalCdf } from '@brinewright/physics';
import { at, sum } from '../recognition/bayes.ts';
import type { Situation, TestReading } from '../situation/situation.ts';

/** How far a reading belongs to each outcome of its test; shares sum to 1. */
export type Membership = Float64Array;

/** What a reading shows; undefined where the expected figure it is judged against is missing. */
export const membershipOf = (reading: TestReading, s: Situation): Membership | undefined => {
  const { test } = reading;
  if (reading.kind === 'cannot-do') return undefined;
  if (reading.kind === 'state')
    return Float64Array.from(test.outcomes, ({ id }) => (id === reading.outcome ? 1 : 0));
  const of = test.reading?.of;
  if (of === undefined) return inBands(test.outcomes, reading.value, reading.u);
  const expected = expectedOf(test, s);
  if (expected === undefined) return undefined;
  const share = reading.value / expected.value;
  const u = Math.hypot(reading.u / expected.value, (share * expected.u) / expected.value);
  return inBands(test.outcomes, share, u);
};

/** The figure that the bands of a test are shares of, where it is known and above nothing. */
export const expectedOf = (
  test: DiagnosisTest,
  { figures }: Situation,
): { readonly value: number; readonly u: number } | undefined => {
  const figure = test.reading?.of === undefined ? undefined : figures[test.reading.of];
  return figure === undefined || !(figure.quantity.si > 0)
    ? undefined
    : { value: figure.quantity.si, u: figure.u ?? 0 };
};

/** Whether a reading of this test could be judged at all. */
export const canBeJudged = (test: DiagnosisTest, s: Situation): boolean =>
  test.reading?.of === undefined || expectedOf(test, s) !== undefined;

/** Soft edges: the share of the normal distribution around the reading that lies in each band. */
const inBands = (outcomes: readonly Outcome[], value: number, u: number): Membership => {
  const shares = Float64Array.from(outcomes, (outcome) => shareIn(outcome, value, u));
  const total = sum(shares);
  return total > 0 ? shares.map((share) => share / total) : nearest(outcomes, value);
};

const shareIn = (outcome: Outcome, value: number, u: number): number => {
  if (!isBand(outcome)) return 0;
  if (!(u > 0)) return gap(outcome, value) === 0 ? 1 : 0;
  const below = outcome.to === undefined ? 1 : normalCdf((outcome.to - value) / u);
  return Math.max(0, below - (outcome.from === undefined ? 0 : normalCdf((outcome.from - value) / u)));
};

const isBand = ({ from, to }: Outcome): boolean => from !== undefined || to !== undefined;

/** How far outside a band a value lies. */
const gap = ({ from, to }: Outcome, value: number): number =>
  Math.max(0, (from ?? Number.NEGATIVE_INFINITY) - value, value - (to ?? Number.POSITIVE_INFINITY));

/** Bands may leave a hole; a value in it belongs to the nearest. */
const nearest = (outcomes: readonly Outcome[], value: number): Membership => {
  const gaps = outcomes.map((outcome) => (isBand(outcome) ? gap(outcome, value) : Number.POSITIVE_INFINITY));
  const least = Math.min(...gaps);
  const hit = Float64Array.from(gaps, (g) => (g === least ? 1 : 0));
  return hit.map((h) => h / sum(hit));
};

/** The outcome a reading most belongs to. */
export const foremost = (test: DiagnosisTest, shares: Membership): Outcome | undefined =>
  test.outcomes.reduce<Outcome | undefined>((best, outcome, o) => {
    const place = best === undefined ? -1 : test.outcomes.indexOf(best);
    return place < 0 || at(shares, o) > at(shares, place) ? outcome : best;
  }, undefined);
