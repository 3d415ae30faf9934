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

  test('finds what is off behind something that is on', () => {
    const lid = operation('lid', { takesOut: ['lid'], back: back(1) });
    const rod = operation('rod', { after: [['lid']], takesOut: ['rod'], back: back(1) });
    const known = new Map([lid, rod].map((one) => [one.id, one]));
    const found = (...steps: readonly PlanStep[]) => checkPlan(steps, atWork, known);
    const behind = { kind: 'off-behind', at: 'rod', missing: ['lid'] };
    expect(found(doing(rod, true), backOf(rod))).toEqual([behind]);
    expect(found(doing(lid, true), doing(rod, true), backOf(lid), backOf(rod))).toEqual([behind]);
    expect(found(doing(lid, true), doing(rod, true), backOf(rod), backOf(lid))).toEqual([]);
  });

  test('lets an open unit under water be shut without a gate, and nothing else', () => {
    expect(kinds(doing(open, true), doing(shut), backOf(open))).toEqual([]);
    expect(kinds(doing(shut), backOf(open))).toEqual(['no-gate', 'not-off']);
  });

  test('finds a unit opened warm, where there is a way to cool it', () => {
    const cool = operation('cool', { phase: 'isolate', makes: { temperature: 'cool' } });
    const known = new Map([cool, shut, open].map((one) => [one.id, one]));
    const found = (...steps: readonly PlanStep[]) => checkPlan(steps, atWork, known).map(({ kind }) => kind);
    expect(found(gate, doing(shut), doing(open), backOf(open))).toEqual(['need']);
    expect(found(gate, doing(shut), doing(cool), doing(open), backOf(open))).toEqual([]);
  });

  test('takes a plan apart by variant', () => {
    const lid = operation('lid', { after: [['inner']] });
    const steps = [doing(lid)];
    const both = checkForVariants(steps, atWork, [lid, inner], [{ size: 'slim' }, { size: 'broad' }]);
    expect(both).toEqual([{ kind: 'after', at: 'lid', missing: ['inner'] }]);
    expect(checkForVariants(steps, atWork, [lid, inner], [{ size: 'broad' }])).toEqual([]);
  });
});
