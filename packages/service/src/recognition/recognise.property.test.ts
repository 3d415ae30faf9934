import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import type { TellAnswer } from '../visit/schema.ts';
import { sum } from './bayes.ts';
import { decisionGroups } from './decision-groups.ts';
import { nextTells } from './next-tells.ts';
import { believe } from './recognise.ts';
import type { Target } from './recognition.ts';
import { variantSpace } from './variant-space.ts';

const runs = { numRuns: 100, seed: 20261125 };

const oneAnswer: fc.Arbitrary<TellAnswer> = fc.oneof(
  fc.constantFrom('3', '4', 'cannot-see', 'unsure').map((answer) => ({ tell: 'rib-count', answer })),
  fc
    .tuple(fc.constantFrom('yes', 'no'), fc.boolean())
    .map(([answer, unsure]) => ({ tell: 'sleeve', answer, unsure })),
  fc.constantFrom('red', 'plain', 'cold-raw').map((answer) => ({ tell: 'plate', answer })),
  fc.constantFrom('a', 'b', 'c').map((answer) => ({ tell: 'injector-mark', answer })),
  fc.integer({ min: 380, max: 520 }).map((tenths) => ({ tell: 'seal-size', answer: `${tenths / 10} mm` })),
);
const answers = fc.uniqueArray(oneAnswer, { selector: ({ tell }) => tell, maxLength: 5 });
const target: fc.Arbitrary<Target> = fc.oneof(
  fc.constantFrom('seal', 'piston', 'injector', 'kit').map((role): Target => ({ kind: 'replace', role })),
  fc.constant<Target>({ kind: 'settings' }),
);

const oddsAfter = (heard: readonly TellAnswer[]): readonly number[] =>
  Array.from(believe(situationOf({ family, answers: heard })).belief.odds);
const family = tinyFamily();

describe('belief in variants', () => {
  it('sums to 1 whatever is answered', () => {
    fc.assert(
      fc.property(answers, (heard) => {
        expect(sum(oddsAfter(heard))).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it('does not depend on the order of answers, to the last bit', () => {
    fc.assert(
      fc.property(
        answers.chain((heard) =>
          fc.tuple(fc.constant(heard), fc.shuffledSubarray(heard, { minLength: heard.length })),
        ),
        ([heard, shuffled]) => {
          expect(oddsAfter(shuffled)).toEqual(oddsAfter(heard));
        },
      ),
      runs,
    );
  });

  it('is not moved by what cannot be seen or is unsure', () => {
    fc.assert(
      fc.property(answers, fc.constantFrom('cannot-see', 'unsure'), (heard, nothing) => {
        const open = family.tells.filter(({ id }) => !heard.some(({ tell }) => tell === id));
        const silent = open.map(({ id }) => ({ tell: id, answer: nothing }));
        expect(oddsAfter([...heard, ...silent])).toEqual(oddsAfter(heard));
      }),
      runs,
    );
  });
});

describe('the next tell', () => {
  const everyTell = (trust: number) =>
    tinyFamily({ tells: tinyFamily().tells.map((tell) => ({ ...tell, trust })) });

  it('is never worth less for more trust, from a plain guess to certainty', () => {
    fc.assert(
      fc.property(
        answers,
        fc.array(target, { minLength: 1, maxLength: 3 }),
        fc.double({ min: 0.6, max: 0.98, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (heard, targets, trust, more) => {
          const { belief } = believe(situationOf({ family, answers: heard }));
          const worth = (t: number) => {
            const other = everyTell(t);
            const groups = decisionGroups(other, targets, new Set());
            const tells = nextTells(other, belief, groups, new Set(), () => 0);
            return (id: string) => tells.find(({ tell }) => tell.id === id)?.worth ?? 0;
          };
          const [less, better] = [worth(trust), worth(trust + more)];
          for (const { id } of family.tells) expect(better(id)).toBeGreaterThanOrEqual(less(id) - 1e-12);
        },
      ),
      runs,
    );
  });

  it('promises the entropy that its answers take away on average, never less than nothing', () => {
    fc.assert(
      fc.property(answers, fc.array(target, { minLength: 1, maxLength: 3 }), (heard, targets) => {
        const { belief } = believe(situationOf({ family, answers: heard }));
        const groups = decisionGroups(family, targets, new Set());
        for (const { worth, leaves } of nextTells(family, belief, groups, new Set(), () => 0)) {
          expect(worth).toBeGreaterThanOrEqual(0.01);
          expect(worth).toBeLessThanOrEqual(Math.log2(groups.count) + 1e-12);
          expect(leaves.reduce((total, { p }) => total + p, 0)).toBeCloseTo(1, 12);
        }
      }),
      runs,
    );
  });

  it('has variants enough to be a test', () => {
    expect(variantSpace(family).variants).toHaveLength(18);
  });
});
