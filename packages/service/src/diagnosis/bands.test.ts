import type { DiagnosisTest } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import type { Situation } from '../situation/situation.ts';
import { situationOf, tinyFamily } from '../testing/tiny-family.ts';
import { membershipOf } from './bands.ts';

const testOf = (id: string): DiagnosisTest => {
  const test = tinyFamily().tests.find((one) => one.id === id);
  if (test === undefined) throw new Error(id);
  return test;
};

const shares = (id: string, value: number, u: number, s: Situation = situationOf()) => {
  const reading = { kind: 'quantity', test: testOf(id), repeats: [value], wild: [], value, u } as const;
  const found = membershipOf(reading, s);
  return found === undefined ? undefined : Array.from(found, (p) => Math.round(p * 1e4) / 1e4);
};

const drawIs = (si: number, u: number): Situation =>
  situationOf({
    figures: {
      'program.draw.rate': {
        id: 'program.draw.rate',
        quantity: quantity('flow', si),
        u,
        by: { kind: 'given', how: 'measured' },
        inputs: {},
        source: 'common-practice',
        issues: [],
      },
    },
  });

describe('the band a reading falls in', () => {
  it('is sure far from its edges and even on them', () => {
    expect(shares('drain-in-service', 0, 6e-7)).toEqual([0.9996, 0.0004]);
    expect(shares('drain-in-service', 2e-6, 6e-7)).toEqual([0.5, 0.5]);
    expect(shares('drain-in-service', 2e-5, 6e-7)).toEqual([0, 1]);
  });

  it('has sharp edges without an uncertainty', () => {
    expect(shares('drain-in-service', 1.9e-6, 0)).toEqual([1, 0]);
  });

  it('is judged against the expected figure where bands are shares of it, with the uncertainty of both', () => {
    expect(shares('draw', 3e-5, 1e-6, drawIs(3e-5, 0))).toEqual([1, 0, 0]);
    expect(shares('draw', 2.4e-5, 1e-6, drawIs(3e-5, 0))).toEqual([0.5, 0.5, 0]);
    const soft = shares('draw', 2.7e-5, 1e-6, drawIs(3e-5, 4e-6));
    expect(soft?.[1]).toBeGreaterThan(shares('draw', 2.7e-5, 1e-6, drawIs(3e-5, 0))?.[1] ?? 1);
  });

  it('cannot be told while the expected figure is missing or nothing', () => {
    expect(shares('draw', 3e-5, 1e-6)).toBeUndefined();
    expect(shares('draw', 3e-5, 1e-6, drawIs(0, 0))).toBeUndefined();
  });

  it('is the nearest one for a value in a hole between bands', () => {
    const whole = testOf('drain-in-service');
    const outcomes = [
      { id: 'low', title: 'low', to: 1, faults: {} },
      { id: 'high', title: 'high', from: 3, faults: {} },
    ];
    const reading = {
      kind: 'quantity',
      test: { ...whole, outcomes },
      repeats: [1.5],
      wild: [],
      value: 1.5,
      u: 0,
    } as const;
    expect(Array.from(membershipOf(reading, situationOf()) ?? [])).toEqual([1, 0]);
  });
});
