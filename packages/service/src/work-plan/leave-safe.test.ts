import { quantity } from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import type { Situation } from '../situation/situation.ts';
import {
  doing,
  doneBy,
  givenFigure,
  ids,
  keys,
  planOf,
  replace,
  stageOf,
  upToStack,
  visitOf,
} from '../testing/planned.ts';
import { repairOf, tinyOperations } from '../testing/tiny-operations.ts';
import type { Visit } from '../visit/schema.ts';

describe('leaving it safe', () => {
  test('takes nothing when nothing is off', () => {
    const { leaveSafe } = planOf([replace('seal')]);
    expect(leaveSafe).toMatchObject({ into: 'service', steps: [], minutes: 0 });
  });

  test('puts back as it was with a full stroke, power, home and water, and looks for leaks', () => {
    const { leaveSafe } = planOf([replace('seal')], doneBy(...upToStack));
    expect(leaveSafe.into).toBe('service');
    expect(ids(leaveSafe.steps)).toEqual([
      'piston-out.back',
      'slim-drive-off.back',
      'pin-out.back',
      'cover-off.back',
      'sweep',
      'plug-in',
      'home',
      'set-program',
      'stroke',
      'open-water',
      'leaks',
    ]);
  });

  test('goes into bypass when a piece is missing, closed and without water, and the card says so', () => {
    const { leaveSafe } = planOf([replace('seal')], {
      done: [
        ...upToStack.map((id) => ({ operation: id })),
        { operation: 'stack-out', counted: { plug: 1, seal: 2, spacer: 2 } },
      ],
      site: { name: 'x', uses: ['boiler', 'food'] },
    });
    expect(leaveSafe.into).toBe('bypass');
    expect(ids(leaveSafe.steps).at(-1)).toBe('sweep');
    expect(ids(leaveSafe.steps)).not.toContain('stack-out.back');
    expect(keys(leaveSafe.card)).toEqual([
      'plan.leave.bypass',
      'plan.leave.bypass-hard',
      'plan.leave.bagged',
      'plan.leave.still',
      'plan.warn.boiler',
      'plan.warn.food',
    ]);
  });

  test('gives the old values of what was set anew', () => {
    const found = { refill: quantity('time', 600), days: 7 };
    const s = visitOf({ settings: { found, set: { refill: quantity('time', 960), days: 7 } } }, { found });
    const stage = stageOf(s, repairOf([]));
    expect(stage.state === 'done' ? keys(stage.value.leaveSafe.settings) : []).toEqual([
      'plan.leave.setting',
      'plan.leave.run',
    ]);
  });

  test('unplugs a valve that lacks a piece, and says so only when it is unplugged', () => {
    const short = { operation: 'stack-out', counted: { plug: 1, seal: 2, spacer: 2 } };
    const plugged: Partial<Visit> = {
      done: [...upToStack.map((id) => ({ operation: id })), short],
      apart: { power: 'on' },
    };
    const { leaveSafe } = planOf([replace('seal')], plugged);
    expect(ids(leaveSafe.steps)[0]).toBe('unplug#2');
    expect(keys(leaveSafe.card)).toContain('plan.leave.bypass');
    const bare = tinyOperations({
      operations: tinyOperations().operations.filter(({ id }) => id !== 'unplug'),
    });
    const powered = planOf([replace('seal')], { done: [short] }, bare).leaveSafe;
    expect(keys(powered.card)).toContain('plan.leave.bypass-powered');
  });

  test('says what it was called for, what was done, what is left, and that nothing was opened', () => {
    const complaint = { complaint: { words: 'hard' } };
    const before = planOf([doing('break-bridge'), replace('seal')], complaint).leaveSafe.card;
    expect(keys(before)).toEqual(['plan.leave.untouched', 'plan.leave.called-for', 'plan.leave.still']);
    const after = planOf([doing('break-bridge'), replace('seal')], {
      ...complaint,
      ...doneBy('break-bridge'),
    }).leaveSafe.card;
    expect(after.find(({ key }) => key === 'plan.leave.done')?.values?.what).toBe('break-bridge');
    expect(after.find(({ key }) => key === 'plan.leave.still')?.values?.what).toEqual({
      key: 'plan.leave.new-part',
      values: { part: { key: 'cli.role.seal' } },
    });
  });

  test('names what is left once: a part to renew, not the operation that takes it out', () => {
    const { card } = planOf([replace('drain-control'), doing('drain-control-out')]).leaveSafe;
    const still = card.find(({ key }) => key === 'plan.leave.still');
    expect(still?.values?.what).toMatchObject({ key: 'plan.leave.new-part' });
  });

  test('runs no longer than the found salt softens, less a day, in what the controller can be set to', () => {
    const gallon = 0.003785411784;
    const figures = {
      ...givenFigure('program.found.volume.full', quantity('volume', 1000 * gallon)),
      ...givenFigure('situation.demand.daily', quantity('volume', 300 * gallon)),
    };
    const run = (found: number) => {
      const s = visitOf({}, { figures, found: { volume: quantity('volume', found * gallon) } });
      const stage = stageOf(s, repairOf([]));
      return stage.state === 'done' ? stage.value.leaveSafe.settings[0] : undefined;
    };
    expect(run(1500)).toMatchObject({
      key: 'plan.leave.run-safe',
      values: { value: { si: expect.closeTo(700 * gallon, 9) } },
    });
    expect(run(600)?.key).toBe('plan.leave.run');
  });

  test('costs what runs to the drain until then, in money where prices are known, and nothing in bypass', () => {
    const leak = givenFigure('program.leak.day', quantity('volume', 0.3));
    const cost = givenFigure('program.leak.cost-day', quantity('money', 2));
    const card = (figures: Situation['figures']) => {
      const stage = stageOf(visitOf({}, { figures }), repairOf([]));
      return stage.state === 'done' ? keys(stage.value.leaveSafe.card) : [];
    };
    expect(card(leak)).toContain('plan.leave.leak-day');
    expect(card({ ...leak, ...cost })).toContain('plan.leave.leak-cost-day');
  });
});
