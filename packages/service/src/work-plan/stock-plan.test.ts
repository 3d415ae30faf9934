import { describe, expect, test } from 'vitest';
import { assess } from '../assess.ts';
import { laundry } from '../testing/laundry.ts';
import { shippedEquipment } from '../testing/shipped.ts';
import { type VisitDocument, visitSchema } from '../visit/schema.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

/* What the shipped stock comes to once the planner has worked on it. */

const equipment = shippedEquipment();

const planFor = (fault: string, more: Partial<VisitDocument> = {}): WorkPlan => {
  const document = laundry({ decided: [{ what: 'fault', value: fault }], ...more });
  const { plan } = assess(visitSchema.parse(document), equipment, {
    now: '2026-11-25T10:00:00Z',
    effort: 'quick',
  }).stages;
  if (plan.state !== 'done') throw new Error('no plan');
  return plan.value;
};

const ids = ({ steps }: Pick<WorkPlan, 'steps'>): readonly string[] => steps.map(({ id }) => id);
const seen = (regeneration: string, sleeve: string): Partial<VisitDocument> => {
  const [unit] = laundry().conditioners;
  if (unit === undefined) throw new Error('no unit');
  const answers = [{ tell: 'rod-sleeve', answer: sleeve }];
  return { conditioners: [{ ...unit, believed: { regeneration } }], answers };
};
const putsOf = (steps: readonly PlanStep[]): readonly string[] =>
  steps.flatMap((step) => (step.kind === 'back' ? step.puts.map(({ role }) => role) : []));

const openingFault = 'riser-o-ring';
const proof = ['run-each-step', 'prove-now', 'arrange-tomorrow'] as const;

describe('water of 140 °F', () => {
  const hot: Partial<VisitDocument> = {
    water: [{ of: 'raw', hardness: '18 gpg', temperature: '140 degF' }],
  };

  test('cools in a valve built for cold water too, before it is vented', () => {
    const steps = ids(planFor(openingFault, hot));
    expect(steps.indexOf('let-cool')).toBeGreaterThan(steps.indexOf('isolate-unit'));
    expect(steps.indexOf('let-cool')).toBeLessThan(steps.indexOf('vent-pressure'));
  });

  test('cools before it is opened where its pressure is gone already, unless it has cooled', () => {
    const apart = { water: 'off', pressure: 'none' } as const;
    const steps = ids(planFor(openingFault, { ...hot, apart }));
    expect(steps).toContain('let-cool');
    expect(steps.indexOf('let-cool')).toBeLessThan(steps.findIndex((id) => id.endsWith('-off')));
    const cooled = { ...hot, apart, done: [{ operation: 'let-cool' }] };
    expect(ids(planFor(openingFault, cooled)).filter((id) => id.startsWith('let-cool'))).toHaveLength(1);
  });

  test.each(['coldest', 'warmest', 'temperature'])('counts by the %s that is given', (key) => {
    const water: VisitDocument['water'] = [{ of: 'raw', hardness: '18 gpg', [key]: '140 degF' }];
    expect(ids(planFor(openingFault, { water }))).toContain('let-cool');
  });

  test('makes nobody wait where it is cold, or where nothing is known of it', () => {
    expect(ids(planFor(openingFault))).not.toContain('let-cool');
    const unknown: Partial<VisitDocument> = { water: [{ of: 'raw', hardness: '18 gpg' }] };
    const [unit] = laundry().conditioners;
    if (unit === undefined) throw new Error('no unit');
    const cold = { conditioners: [{ ...unit, believed: { water: 'cold' } }] };
    expect(ids(planFor(openingFault, { ...unknown, ...cold }))).not.toContain('let-cool');
  });
});

describe('the brine tank', () => {
  test('is left alone where it still holds its brine', () => {
    expect(ids(planFor(openingFault))).not.toContain('fill-brine-tank');
  });

  test.each([
    ['brine-tank-muddy', 'clean-brine-tank'],
    ['air-check-early', 'float-out'],
    ['brine-valve-leaking', 'brine-valve-out'],
  ])('is filled after %s was mended, once each step was run', (fault, work) => {
    const steps = ids(planFor(fault));
    expect(steps).toContain(work);
    expect(steps.indexOf('fill-brine-tank')).toBeGreaterThan(steps.indexOf('run-each-step'));
  });

  test('that was washed without shutting the water is still to be filled when that is done', () => {
    const done = [{ operation: 'clean-brine-tank' }];
    const { steps } = planFor('brine-tank-muddy', { done });
    expect(steps.find(({ id }) => id === 'fill-brine-tank')).toMatchObject({ done: false });
    expect(ids({ steps })).not.toContain('gate');
  });
});

test('a visit that only sets the program runs each step, proves it and arranges tomorrow, in this order', () => {
  const steps = ids(planFor('refill-time-wrong'));
  expect(steps.filter((id) => [...proof, 'set-program'].some((one) => one === id))).toEqual([
    'set-program',
    ...proof,
  ]);
  expect(steps).not.toContain('gate');
});

test('reassembly names no part that the valve has not: a sleeve is of the shut outlet', () => {
  const seals = 'leak-raw-to-drain';
  expect(putsOf(planFor(seals, seen('raw-pass', 'no')).steps)).toContain('piston');
  expect(putsOf(planFor(seals, seen('raw-pass', 'no')).steps)).not.toContain('sleeve');
  expect(putsOf(planFor(seals, seen('shut-outlet', 'yes')).steps)).toContain('sleeve');
});
