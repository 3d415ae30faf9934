import type { Family } from '@brinewright/equipment';
import { quantity } from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import { doing, doneBy, givenFigure, ids, planOf, replace, stageOf, visitOf } from '../testing/planned.ts';
import { back, operation, repairOf, tinyOperations } from '../testing/tiny-operations.ts';

describe('a unit that may be hot', () => {
  const cooling = [
    operation('cool-down', {
      phase: 'isolate',
      makes: { temperature: 'cool' },
      minutes: { hands: 1, waiting: 45 },
    }),
    operation('lid-off', { needs: { temperature: 'cool' }, takesOut: ['lid'], back: back(1) }),
  ];
  const stepsWith = (features: Family['features']) =>
    ids(planOf([replace('lid')], {}, tinyOperations({ operations: cooling, features, never: [] })).steps);

  const water = tinyOperations().features.filter(({ id }) => id === 'water');

  test('cools before it is opened, and a cold one does not wait', () => {
    expect(stepsWith(water).slice(0, 2)).toEqual(['cool-down', 'lid-off']);
    expect(stepsWith([])[0]).toBe('lid-off');
  });

  test('goes by its water where that is known: a cold build on hot water cools, a hot build on cold water does not', () => {
    const family = (features: Family['features']) =>
      tinyOperations({ operations: cooling, features, never: [] });
    const first = (features: Family['features'], kelvin: number) => {
      const figures = givenFigure('situation.temperature.warmest', quantity('temperature', kelvin));
      const stage = stageOf(visitOf({}, { family: family(features), figures }), repairOf([replace('lid')]));
      return stage.state === 'done' ? stage.value.steps[0]?.id : undefined;
    };
    expect(first([], 333.15)).toBe('cool-down');
    expect(first(water, 288.15)).toBe('lid-off');
  });

  test('is hot again once its water was on: the second time it cools anew', () => {
    const shutting = tinyOperations({
      operations: [
        operation('shut', { phase: 'isolate', always: true, makes: { water: 'off', pressure: 'none' } }),
        ...cooling.map((one) => ({ ...one, needs: { ...one.needs, water: 'off' as const } })),
        operation('open', { phase: 'restore', always: true, makes: { water: 'on' } }),
      ],
      features: water,
      never: [],
    });
    const once = ids(planOf([replace('lid')], {}, shutting).steps).filter((id) => id !== 'gate');
    const again = planOf([doing('lid-off')], doneBy(...once.slice(0, 2), 'open', 'shut'), shutting);
    expect(once.slice(0, 2)).toEqual(['shut', 'cool-down']);
    expect(ids(again.steps)).toContain('cool-down#2');
  });
});
