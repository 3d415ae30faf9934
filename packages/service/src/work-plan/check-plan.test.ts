import type { Operation } from '@brinewright/equipment';
import { describe, expect, test } from 'vitest';
import { back, operation } from '../testing/tiny-operations.ts';
import { checkForVariants, checkPlan } from './check-plan.ts';
import { atWork } from './state.ts';
import type { PlanStep } from './work-plan.ts';

const doing = (of: Operation, done = false): PlanStep => ({
  kind: 'operation',
  id: of.id,
  operation: of,
  done,
  tools: [],
  minutes: 1,
});
const backOf = (of: Operation): PlanStep => ({
  kind: 'back',
  id: `${of.id}.back`,
  of,
  done: false,
  minutes: 1,
  puts: [],
  lookOvers: [],
});
const gate: PlanStep = { kind: 'gate', id: 'gate', asks: [], passed: true };
const sweep: PlanStep = { kind: 'sweep', id: 'sweep', done: false };

const shut = operation('shut', { phase: 'isolate', makes: { water: 'off' } });
const open = operation('open', { needs: { water: 'off' }, takesOut: ['lid'], back: back(1) });
const inner = operation('inner', { after: [['open']], fits: { size: ['slim'] } });
const all = new Map([shut, open, inner].map((one) => [one.id, one]));

const kinds = (...steps: readonly PlanStep[]) => checkPlan(steps, atWork, all).map(({ kind }) => kind);

describe('the checker of plans', () => {
  test('finds nothing in a plan that keeps the rules', () => {
    expect(kinds(gate, doing(shut), doing(open), doing(inner), backOf(open), sweep)).toEqual([]);
  });

  test('finds water shut without a gate before it', () => {
    expect(kinds(doing(shut), gate)).toEqual(['no-gate']);
  });

  test('finds an operation before the state it needs', () => {
    expect(kinds(gate, doing(open), doing(shut), backOf(open))).toEqual(['need']);
  });

  test('finds an operation before what it comes after', () => {
    expect(kinds(doing(inner))).toEqual(['after']);
  });

  test('finds what never goes back, goes back twice, or is still off at the sweep', () => {
    expect(kinds(gate, doing(shut), doing(open))).toEqual(['left-off']);
    expect(kinds(gate, doing(shut), doing(open), backOf(open), backOf(open))).toEqual(['not-off']);
    expect(kinds(gate, doing(shut), doing(open), sweep, backOf(open))).toEqual(['swept-early']);
  });

  test('takes what is done as it is', () => {
    expect(kinds(doing(inner, true))).toEqual([]);
  });

  test('takes a plan apart by variant', () => {
    const lid = operation('lid', { after: [['inner']] });
    const steps = [doing(lid)];
    const both = checkForVariants(steps, atWork, [lid, inner], [{ size: 'slim' }, { size: 'broad' }]);
    expect(both).toEqual([{ kind: 'after', at: 'lid', missing: ['inner'] }]);
    expect(checkForVariants(steps, atWork, [lid, inner], [{ size: 'broad' }])).toEqual([]);
  });
});
