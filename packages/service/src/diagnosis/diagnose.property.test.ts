import type { DiagnosisTest } from '@brinewright/equipment';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { believe } from '../recognition/recognise.ts';
import type { Situation, TestReading } from '../situation/situation.ts';
import { finish } from '../stage/work.ts';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import { diagnose } from './diagnose.ts';
import type { Diagnosis } from './diagnosis.ts';
import { statedOdds } from './stated-odds.ts';

const runs = { numRuns: 100, seed: 20261125 };
const family = tinyFamily();

const diagnosed = (given: Partial<Situation>): Diagnosis => {
  const s = situationOf({ family, ...given });
  const stage = finish(diagnose(s, believe(s).belief, statedOdds, (operations) => operations.length));
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

const readingOf = (test: DiagnosisTest): fc.Arbitrary<TestReading> =>
  test.reading === undefined
    ? fc
        .constantFrom(...test.outcomes.map(({ id }) => id))
        .map((outcome) => ({ kind: 'state', test, outcome }))
    : fc
        .tuple(
          fc.double({ min: 0, max: 1e-4, noNaN: true }),
          fc.double({ min: 1e-8, max: 1e-5, noNaN: true }),
        )
        .map(([value, u]) => ({ kind: 'quantity', test, repeats: [value], wild: [], value, u }));

const readings = fc
  .subarray([...family.tests])
  .chain((tests) => fc.tuple(...tests.map(readingOf)))
  .map((list): readonly TestReading[] => list);

const told = fc.record({
  readings,
  complaints: fc.subarray(['hard-water']),
  changes: fc.subarray(['refill-changed']),
  recentlyServiced: fc.boolean(),
});

const oddsById = ({ odds }: Diagnosis) => new Map(odds.map(({ fault, p }) => [fault, p]));

describe('odds of faults', () => {
  it('sum to 1, with every one between 0 and 1, and groups sum to the same', () => {
    fc.assert(
      fc.property(told, (given) => {
        const { odds, groups } = diagnosed(given);
        expect(odds.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
        expect(groups.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
        expect(odds.every(({ p }) => p > 0 && p < 1)).toBe(true);
      }),
      runs,
    );
  });

  it('do not depend on the order in which things were read, to the last bit', () => {
    fc.assert(
      fc.property(
        told.chain((given) =>
          fc.tuple(
            fc.constant(given),
            fc.shuffledSubarray([...given.readings], { minLength: given.readings.length }),
          ),
        ),
        ([given, shuffled]) => {
          const plain = ({ odds }: Diagnosis) => odds.map(({ fault, p }) => [fault, p]);
          expect(plain(diagnosed({ ...given, readings: shuffled }))).toEqual(plain(diagnosed(given)));
        },
      ),
      runs,
    );
  });

  it('are not moved by a test that cannot be done', () => {
    fc.assert(
      fc.property(told, (given) => {
        const made = new Set(given.readings.map(({ test }) => test.id));
        const cannot = family.tests
          .filter(({ id }) => !made.has(id))
          .map((test): TestReading => ({ kind: 'cannot-do', test }));
        const more = diagnosed({ ...given, readings: [...given.readings, ...cannot] });
        expect(oddsById(more)).toEqual(oddsById(diagnosed(given)));
      }),
      runs,
    );
  });

  it('never rise for a fault that the outcome speaks against more than against any other', () => {
    fc.assert(
      fc.property(told, fc.nat(), fc.nat(), (given, whichTest, whichOutcome) => {
        const made = new Set(given.readings.map(({ test }) => test.id));
        const open = family.tests.filter(({ id, reading }) => !made.has(id) && reading === undefined);
        const test = open[whichTest % Math.max(open.length, 1)];
        if (test === undefined) return;
        const o = whichOutcome % test.outcomes.length;
        const before = oddsById(diagnosed(given));
        const reading: TestReading = { kind: 'state', test, outcome: test.outcomes[o]?.id ?? '' };
        const after = oddsById(diagnosed({ ...given, readings: [...given.readings, reading] }));
        const s = situationOf({ family });
        const likelihoods = new Map(
          [...before.keys()].map((fault) => [fault, statedOdds.predict(fault, test, s)[o] ?? 0]),
        );
        const least = Math.min(...likelihoods.values());
        const most = Math.max(...likelihoods.values());
        for (const [fault, p] of before) {
          if (likelihoods.get(fault) === least) expect(after.get(fault)).toBeLessThanOrEqual(p + 1e-12);
          if (likelihoods.get(fault) === most) expect(after.get(fault)).toBeGreaterThanOrEqual(p - 1e-12);
        }
      }),
      runs,
    );
  });

  it('are led by the only fault of a sure outcome', () => {
    for (const [id, outcome, fault] of [
      ['trickle', 'raw', 'leak-raw-to-drain'],
      ['trickle', 'soft', 'leak-soft-to-drain'],
      ['salt-level', 'low', 'no-salt'],
    ] as const) {
      const test = family.tests.find((one) => one.id === id);
      if (test === undefined) throw new Error(id);
      expect(diagnosed({ readings: [{ kind: 'state', test, outcome }] }).odds[0]?.fault).toBe(fault);
    }
  });
});

describe('the next test', () => {
  it('tells at least 0.03 nat and at most what the groups hold, and its outcomes sum to 1', () => {
    fc.assert(
      fc.property(told, (given) => {
        const { next, groups } = diagnosed(given);
        const most = groups.reduce((bits, { p }) => bits - p * Math.log2(p), 0);
        for (const { bits, outcomes } of next) {
          expect(bits).toBeGreaterThanOrEqual(0.03 / Math.LN2);
          expect(bits).toBeLessThanOrEqual(most + 1e-9);
          expect(outcomes.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
        }
      }),
      runs,
    );
  });
});
