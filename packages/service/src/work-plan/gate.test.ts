import type { Family } from '@brinewright/equipment';
import { describe, expect, test } from 'vitest';
import { recognise } from '../recognition/recognise.ts';
import type { Target } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import { finish } from '../stage/work.ts';
import { doneBy, planOf, replace, visitOf } from '../testing/planned.ts';
import { back, operation, repairOf, surroundings, tinyOperations } from '../testing/tiny-operations.ts';
import type { Visit } from '../visit/schema.ts';
import { planWork } from './plan-work.ts';
import { sensibleSequencer } from './sensible-sequencer.ts';

describe('the gate', () => {
  const asksOf = (s: Situation, repair: RepairPlan, known = true) => {
    const stage = recognise(s, repair.targets, () => 0);
    const recognition = stage.state === 'done' ? { ...stage.value, decided: known } : undefined;
    const planned = finish(planWork(s, recognition, repair, sensibleSequencer));
    const gate =
      planned.state === 'done' ? planned.value.steps.find(({ kind }) => kind === 'gate') : undefined;
    return gate?.kind === 'gate' ? gate : undefined;
  };
  const agreed = {
    kit: ['kit-slim'],
    tools: ['hook-slim', 'hook-broad'],
    photographed: true,
    priceAgreed: true,
    outageAgreed: true,
    wayBack: 'close it',
  };
  const seals = repairOf([replace('seal')], {
    parts: [{ part: 'seal-slim', role: 'seal', count: 3, p: 1 }],
  });
  const unmet = (gate: Visit['gate'], repair = seals, known = true) =>
    asksOf(visitOf(gate === undefined ? {} : { gate }), repair, known)
      ?.asks.filter(({ met }) => !met)
      .map(({ id }) => id);

  test('asks for everything when nothing was agreed', () => {
    expect(unmet(undefined, seals, false)).toEqual([
      'variant',
      'kit',
      'tools',
      'photographed',
      'price',
      'outage',
      'way-back',
    ]);
  });

  test('is passed when everything was compared and agreed', () => {
    expect(unmet(agreed)).toEqual([]);
    expect(asksOf(visitOf({ gate: agreed }), seals)?.passed).toBe(true);
  });

  test('does not pass a kit that is not of this valve', () => {
    const wrong = [{ id: 'kit-broad', is: 'part', says: { key: 'plan.gate.kit-open' } }] as const;
    expect(unmet(agreed, { ...seals, wrong })).toEqual(['kit']);
  });

  test('does not pass without the special tool of an operation in hand', () => {
    expect(unmet({ ...agreed, tools: ['hook-broad'] })).toEqual(['tools']);
  });

  test('stops the plan once it is next, and not before', () => {
    expect(planOf([replace('seal')]).stopped).toBeUndefined();
    const { stopped } = planOf([replace('seal')], doneBy('photograph'));
    expect(stopped).toMatchObject({ at: 'gate', why: { key: 'plan.stopped.gate' } });
  });
});

describe('a gate that was passed over', () => {
  test('is said to be, and nobody is told that the water stays on', () => {
    const { stopped } = planOf([replace('seal')], doneBy('photograph', 'warn', 'shut'));
    expect(stopped).toMatchObject({ at: 'gate', why: { key: 'plan.stopped.gate-passed-over' } });
  });
});

describe('the outage', () => {
  const outage = (more: Partial<Visit>, targets: readonly Target[] = [replace('seal')], family?: Family) => {
    const plan = planOf(targets, more, family);
    const gate = plan.steps.find(({ kind }) => kind === 'gate');
    const ask = gate?.kind === 'gate' ? gate.asks.find(({ id }) => id === 'outage') : undefined;
    return { building: plan.building, says: ask?.says.values?.building };
  };

  test('is raw water where a bypass was seen, and either where nobody looked', () => {
    expect(outage({ apart: { bypass: 'service' } })).toEqual({
      building: 'raw',
      says: { key: 'plan.building.raw' },
    });
    expect(outage({})).toEqual({ building: 'raw-or-none', says: { key: 'plan.building.raw-or-none' } });
  });

  test('is no water at all where the bypass itself comes off', () => {
    const family = tinyOperations({
      operations: [
        ...surroundings,
        operation('bypass-off', {
          after: [['verify']],
          needs: { water: 'off', pressure: 'none' },
          takesOut: ['bypass'],
          back: back(8),
        }),
      ],
      parts: [],
    });
    expect(outage({ apart: { bypass: 'service' } }, [replace('bypass')], family).building).toBe('none');
  });
});
