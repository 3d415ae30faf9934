import type { DiagnosisTest, Strength } from '@brinewright/equipment';
import { describe, expect, it } from 'vitest';
import { situationOf } from '../testing/tiny-family.ts';
import { noneOfThese } from './diagnosis.ts';
import { statedOdds } from './stated-odds.ts';

const s = situationOf();

/** A test with outcomes normal, a, b; which of them list the fault 'f', and how strongly. */
const listing = (strengths: Readonly<Partial<Record<'normal' | 'a' | 'b', Strength>>>): DiagnosisTest => {
  const outcome = (id: 'normal' | 'a' | 'b') => {
    const strength = strengths[id];
    return { id, title: id, faults: strength === undefined ? {} : { f: strength } };
  };
  return {
    id: 't',
    ask: 't',
    how: [],
    outcomes: [outcome('normal'), outcome('a'), outcome('b')],
    normal: 'normal',
    minutes: { hands: 1, waiting: 0 },
    needs: {},
    after: [],
    tools: [],
    hazards: [],
    kinds: ['softener'],
    fits: {},
  };
};

const odds = (test: DiagnosisTest, fault = 'f'): readonly number[] =>
  Array.from(statedOdds.predict(fault, test, s), (p) => Math.round(p * 1e6) / 1e6);

describe('stated odds', () => {
  it('leave a fault that is listed nowhere at the normal outcome, 0.9', () => {
    expect(odds(listing({}))).toEqual([0.9, 0.05, 0.05]);
  });

  it('give a listed outcome its strength and most of the rest to the normal one', () => {
    expect(odds(listing({ a: 'likely' }))).toEqual([0.18, 0.8, 0.02]);
    expect(odds(listing({ a: 'hardly' }))).toEqual([0.855, 0.05, 0.095]);
  });

  it('share what the normal outcome leaves where the fault is listed there', () => {
    expect(odds(listing({ normal: 'sure' }))).toEqual([0.97, 0.015, 0.015]);
  });

  it('scale strengths that claim too much, and leave a little to what is not listed', () => {
    expect(odds(listing({ a: 'sure', b: 'sure' }))).toEqual([0.03, 0.485, 0.485]);
    expect(odds(listing({ normal: 'possible', a: 'possible', b: 'possible' }))).toEqual([
      0.333333, 0.333333, 0.333333,
    ]);
  });

  it('let none-of-these show anything: normal by half', () => {
    expect(odds(listing({ a: 'sure' }), noneOfThese)).toEqual([0.5, 0.25, 0.25]);
  });

  it('sum to 1 and call nothing impossible, whatever is listed', () => {
    const choices = [undefined, 'sure', 'likely', 'possible', 'hardly'] as const;
    for (const normal of choices)
      for (const a of choices)
        for (const b of choices) {
          const listed = { ...(normal && { normal }), ...(a && { a }), ...(b && { b }) };
          const row = statedOdds.predict('f', listing(listed), s);
          expect(row.reduce((total, p) => total + p, 0)).toBeCloseTo(1, 12);
          expect(Math.min(...row)).toBeGreaterThan(0);
        }
  });

  it('give a test of one outcome no choice', () => {
    const test = listing({});
    expect(odds({ ...test, outcomes: test.outcomes.slice(0, 1) })).toEqual([1]);
  });
});
