import type { Family } from '@brinewright/equipment';
import { type Quantity, quantity } from '@brinewright/units';
import { describe, expect, test } from 'vitest';
import { recognise } from '../recognition/recognise.ts';
import type { Target } from '../recognition/recognition.ts';
import type { RepairPlan } from '../repair/repair.ts';
import type { Situation } from '../situation/situation.ts';
import { finish } from '../stage/work.ts';
import { situationOf } from '../testing/tiny-family.ts';
import { back, operation, repairOf, surroundings, tinyOperations } from '../testing/tiny-operations.ts';
import type { Visit } from '../visit/schema.ts';
import { planWork } from './plan-work.ts';
import { sensibleSequencer } from './sensible-sequencer.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

const replace = (role: string): Target => ({ kind: 'replace', role });
const doing = (id: string): Target => ({ kind: 'operation', operation: id });

const visitOf = (more: Partial<Visit>, given: Partial<Situation> = {}): Situation => {
  const s = situationOf({ family: tinyOperations(), ...given });
  return { ...s, visit: { ...s.visit, ...more } };
};

const stageOf = (s: Situation, repair: RepairPlan) =>
  finish(planWork(s, undefined, repair, sensibleSequencer));

const planOf = (targets: readonly Target[], more: Partial<Visit> = {}, family?: Family): WorkPlan => {
  const s = visitOf(more, family === undefined ? {} : { family });
  const stage = stageOf(s, repairOf(targets));
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

const ids = (steps: readonly PlanStep[]): readonly string[] => steps.map(({ id }) => id);
const doneBy = (...list: readonly string[]): Pick<Visit, 'done'> => ({
  done: list.map((id) => ({ operation: id })),
});
const keys = (messages: readonly { readonly key: string }[]): readonly string[] =>
  messages.map(({ key }) => key);

const givenFigure = (id: string, value: Quantity): Situation['figures'] => ({
  [id]: {
    id,
    quantity: value,
    by: { kind: 'given', how: 'measured' },
    inputs: {},
    source: 'visit',
    issues: [],
  },
});

const upToStack = [
  'photograph',
  'warn',
  'shut',
  'vent',
  'to-removal',
  'unplug',
  'verify',
  'cover-off',
  'pin-out',
  'slim-drive-off',
  'piston-out',
] as const;

describe('a plan that opens the valve', () => {
  const plan = planOf([replace('seal'), doing('look-in-bore')]);

  test('records, passes the gate, shuts, opens, works, puts back in reverse, sweeps, restores and proves', () => {
    expect(ids(plan.steps)).toEqual([
      'photograph',
      'gate',
      'warn',
      'shut',
      'vent',
      'to-removal',
      'unplug',
      'verify',
      'cover-off',
      'pin-out',
      'broad-drive-off',
      'slim-drive-off',
      'piston-out',
      'stack-out',
      'look-in-bore',
      'stack-out.back',
      'piston-out.back',
      'slim-drive-off.back',
      'broad-drive-off.back',
      'pin-out.back',
      'cover-off.back',
      'sweep',
      'plug-in',
      'home',
      'set-program',
      'stroke',
      'open-water',
      'leaks',
      'run-steps',
      'prove',
    ]);
  });

  test('takes the quicker way to the pin and leaves the side plate on', () => {
    expect(ids(plan.steps)).not.toContain('side-plate-off');
  });

  test('covers both bodies and says which operation goes with which', () => {
    const drives = plan.steps.filter(({ id }) => id.endsWith('drive-off'));
    expect(drives.map((step) => (step.kind === 'operation' ? step.when : undefined))).toEqual([
      { size: ['broad'] },
      { size: ['slim'] },
    ]);
    expect(keys(plan.says).filter((key) => key === 'plan.says.only-when')).toHaveLength(2);
  });

  test('counts the pieces out by the list of the family and in the other way round', () => {
    const counts = plan.steps.flatMap((step) =>
      'count' in step ? [step.count?.pieces.map(({ is }) => is)] : [],
    );
    expect(counts).toEqual([
      ['plug', 'seal', 'spacer', 'seal', 'spacer', 'seal'],
      ['seal', 'spacer', 'seal', 'spacer', 'seal', 'plug'],
    ]);
  });

  test('puts new seals and spacers in, and the piston that came out', () => {
    const puts = plan.steps.flatMap((step) => (step.kind === 'back' ? step.puts : []));
    expect(puts).toContainEqual({ role: 'seal', as: 'new' });
    expect(puts).toContainEqual({ role: 'spacer', as: 'new' });
    expect(puts).toContainEqual({ role: 'piston', as: 'old' });
  });

  test('says what looks wrong but is right, where the stack goes in', () => {
    const stack = plan.steps.find(({ id }) => id === 'stack-out.back');
    expect(stack?.kind === 'back' ? stack.lookOvers : []).toEqual(['proud-plug']);
  });

  test('names the cautions in the order in which they are met', () => {
    expect(plan.hazards).toEqual(['warned', 'pressure', 'mains', 'pressure-returns']);
  });

  test('sums what is still to do for the variant that takes longest, and the part of it with the water off', () => {
    expect(plan.minutes).toBe(77);
    expect(plan.outageMinutes).toBe(67);
  });

  test('says that one known bad seal means the stack', () => {
    expect(keys(plan.says)).toContain('plan.says.whole-stack');
  });
});

describe('a plan that does not need the water off', () => {
  test('has no gate and no isolation, and is proved all the same', () => {
    const plan = planOf([doing('break-bridge'), doing('regenerate')]);
    expect(ids(plan.steps)).toEqual(['break-bridge', 'run-steps', 'regenerate', 'prove']);
    expect(plan.outageMinutes).toBe(0);
    expect(keys(plan.says)).toEqual(['plan.says.water-stays-on']);
  });

  const family = tinyOperations({
    faults: tinyOperations().faults.map((fault) =>
      fault.repair.settings ? { ...fault, repair: { ...fault.repair, do: ['set-program'] } } : fault,
    ),
  });
  const settings = (...done: readonly string[]) =>
    planOf([{ kind: 'settings' }], doneBy(...done), family).steps;

  test('for settings records, sets, runs each step and proves, and leaves power and piston alone', () => {
    expect(ids(settings())).toEqual(['photograph', 'set-program', 'run-steps', 'prove']);
  });

  test('is still to be proved once the settings are in, and over once it is', () => {
    const left = (steps: readonly PlanStep[]) =>
      ids(steps.filter((step) => step.kind !== 'gate' && !step.done));
    expect(left(settings('photograph', 'set-program'))).toEqual(['run-steps', 'prove']);
    expect(left(settings('photograph', 'set-program', 'run-steps', 'prove'))).toEqual([]);
  });
});

describe('jobs beside one another', () => {
  test('work that needs no water off is done before it goes off, work on running water after it is back', () => {
    const steps = ids(planOf([doing('clean-injector'), doing('break-bridge'), doing('flush-heater')]).steps);
    expect(steps.indexOf('break-bridge')).toBeLessThan(steps.indexOf('shut'));
    expect(steps.indexOf('gate')).toBeLessThan(steps.indexOf('break-bridge'));
    expect(steps.indexOf('flush-heater')).toBeGreaterThan(steps.indexOf('open-water'));
  });

  test('the piston is not moved for a job that does not need it', () => {
    expect(ids(planOf([doing('clean-injector')]).steps)).not.toContain('to-removal');
  });
});

describe('what is done', () => {
  test('is marked, and the plan goes on from there to the same end', () => {
    const whole = planOf([replace('seal')]);
    const half = planOf([replace('seal')], doneBy(...upToStack.slice(0, 6)));
    expect(ids(half.steps)).toEqual(ids(whole.steps));
    expect(half.steps.filter((step) => step.kind === 'operation' && step.done)).toHaveLength(6);
    expect(half.state).toMatchObject({ water: 'off', pressure: 'none', power: 'off', piston: 'removal' });
  });

  test('goes back in even when the target has gone', () => {
    const plan = planOf([], doneBy(...upToStack));
    expect(ids(plan.steps).filter((id) => id.endsWith('.back'))).toEqual([
      'piston-out.back',
      'slim-drive-off.back',
      'pin-out.back',
      'cover-off.back',
    ]);
  });

  test('counts as a second time after it was put back and something else is needed', () => {
    const first = ids(planOf([doing('clean-injector')]).steps).filter((id) => id !== 'gate');
    const again = planOf([doing('clean-injector'), replace('drain-control')], doneBy(...first));
    const left = again.steps.filter((step) => step.kind !== 'gate' && !step.done);
    expect(ids(left).slice(0, 6)).toEqual([
      'warn#2',
      'shut#2',
      'vent#2',
      'unplug#2',
      'verify#2',
      'drain-control-out',
    ]);
    expect(ids(left)).toContain('open-water#2');
  });

  test('is over when everything was done', () => {
    const all = ids(planOf([doing('clean-injector')]).steps).filter((id) => id !== 'gate');
    const plan = planOf([doing('clean-injector')], doneBy(...all));
    expect(plan.steps.filter((step) => step.kind !== 'gate' && !step.done)).toEqual([]);
    expect(plan.minutes).toBe(0);
  });
});

describe('what is shut by an operation with a reverse of its own', () => {
  const family = tinyOperations({
    operations: [
      operation('tap-shut', {
        phase: 'isolate',
        always: true,
        makes: { water: 'off', pressure: 'none' },
        back: back(1),
      }),
      operation('lid-off', { takesOut: ['lid'], back: back(1) }),
      operation('plug-out', {
        phase: 'isolate',
        always: true,
        after: [['lid-off']],
        makes: { power: 'off' },
        back: back(1),
      }),
      operation('motor-out', {
        needs: { water: 'off', pressure: 'none', power: 'off' },
        takesOut: ['motor'],
        back: back(1),
      }),
    ],
  });

  test('is opened after the unit is closed, and the lid over the plug goes on last', () => {
    expect(ids(planOf([replace('motor')], {}, family).steps)).toEqual([
      'gate',
      'lid-off',
      'plug-out',
      'tap-shut',
      'motor-out',
      'motor-out.back',
      'sweep',
      'tap-shut.back',
      'plug-out.back',
      'lid-off.back',
    ]);
  });
});

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

describe('what stands in `apart`', () => {
  test('is taken as done when it is shut already', () => {
    const plan = planOf([doing('clean-injector')], { apart: { water: 'off', pressure: 'none' } });
    const done = plan.steps.filter((step) => step.kind === 'operation' && step.done);
    expect(ids(done)).toEqual(['shut', 'vent']);
  });

  test('outweighs what is written as done: water found on is shut again', () => {
    const plan = planOf([doing('clean-injector')], {
      ...doneBy('photograph', 'warn', 'shut', 'vent', 'unplug'),
      apart: { water: 'on' },
    });
    expect(ids(plan.steps)).toContain('shut#2');
    expect(ids(plan.steps)).toContain('vent#2');
  });
});

describe('the count of the stack', () => {
  const counted = (out: Record<string, number>, into?: Record<string, number>): Pick<Visit, 'done'> => ({
    done: [
      ...upToStack.map((id) => ({ operation: id })),
      { operation: 'stack-out', counted: out },
      ...(into === undefined ? [] : [{ operation: 'stack-out.back', counted: into }]),
    ],
  });
  const right = { plug: 1, seal: 3, spacer: 2 };

  test('that agrees lets the plan go on', () => {
    const plan = planOf([replace('seal')], counted(right));
    expect(plan.stopped).not.toMatchObject({ at: 'stack-out' });
    const step = plan.steps.find(({ id }) => id === 'stack-out');
    expect(step?.kind === 'operation' && step.count?.agrees).toBe(true);
  });

  test('a piece short stops the plan there and says where to look', () => {
    const { stopped } = planOf([replace('seal')], counted({ ...right, spacer: 1 }));
    expect(stopped).toMatchObject({
      at: 'stack-out',
      why: { key: 'plan.miscount.out-missing', values: { counted: 1, listed: 2 } },
      mend: { key: 'plan.miscount-mend.out-missing' },
    });
  });

  test('a piece too many says what it means', () => {
    const { stopped } = planOf([replace('seal')], counted({ ...right, seal: 4 }));
    expect(stopped?.why.key).toBe('plan.miscount.out-extra');
  });

  test('on the way in keeps the stack open until it agrees', () => {
    const plan = planOf([replace('seal')], counted(right, { ...right, seal: 2 }));
    expect(plan.stopped?.at).toBe('stack-out.back');
    const step = plan.steps.find(({ id }) => id === 'stack-out.back');
    expect(step?.kind === 'back' && step.done).toBe(false);
  });

  test('taken again and right, the plan goes on', () => {
    const { done = [] } = counted({ ...right, seal: 2 });
    const plan = planOf([replace('seal')], { done: [...done, { operation: 'stack-out', counted: right }] });
    expect(plan.stopped?.at).not.toBe('stack-out');
  });

  test('that was never taken is said', () => {
    const s = visitOf(doneBy(...upToStack, 'stack-out'));
    const { issues } = stageOf(s, repairOf([replace('seal')]));
    expect(issues.map(({ code }) => code)).toContain('not-counted');
  });
});

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

describe('entries that were forgotten', () => {
  const stageFor = (...list: readonly string[]) => stageOf(visitOf(doneBy(...list)), repairOf([]));
  const planFor = (...list: readonly string[]): WorkPlan => planOf([], doneBy(...list));
  const backs = ({ steps }: Pick<WorkPlan, 'steps'>): readonly string[] =>
    steps.flatMap((step) => (step.kind === 'back' && !step.done ? [step.of.id] : []));
  const [record, warn, shut, vent, removal, unplug, verify] = upToStack;
  const isolated = [record, warn, shut, vent, removal, unplug, verify] as const;

  test('what had to come off goes back too, in the plan and in leaving it safe', () => {
    const plan = planFor(...isolated, 'cover-off', 'slim-drive-off', 'piston-out');
    const wanted = ['piston-out', 'slim-drive-off', 'pin-out', 'cover-off'];
    expect(backs(plan)).toEqual(wanted);
    expect(backs(plan.leaveSafe)).toEqual(wanted);
  });

  test('a way of which something is off is taken before a quicker one', () => {
    expect(backs(planFor(...isolated, 'side-plate-off', 'slim-drive-off'))).toEqual([
      'slim-drive-off',
      'pin-out',
      'side-plate-off',
    ]);
  });

  test('the stack alone brings everything before it, for every variant that remains', () => {
    const plan = planFor('stack-out');
    expect(backs(plan)).toEqual([
      'stack-out',
      'piston-out',
      'slim-drive-off',
      'broad-drive-off',
      'pin-out',
      'cover-off',
    ]);
  });

  test('work inside and a part written as back speak for what came off before them', () => {
    expect(backs(planFor(...isolated, 'clean-injector'))).toEqual(['injector-out']);
    expect(backs(planFor(...isolated, 'piston-out.back'))).toContain('pin-out');
  });

  test('what is written as back behind something that is off goes back once more', () => {
    const plan = planFor(...isolated, 'cover-off', 'pin-out', 'cover-off.back');
    expect(backs(plan)).toEqual(['pin-out', 'cover-off']);
    expect(backs(planFor(...isolated, 'cover-off', 'pin-out', 'pin-out.back', 'cover-off.back'))).toEqual([]);
  });

  test('are named once, with how to mend it, until they are written', () => {
    const said = (...list: readonly string[]) =>
      stageFor(...list).issues.filter(({ code }) => code === 'taken-as-off');
    const [issue, ...more] = said(...isolated, 'cover-off', 'slim-drive-off');
    expect(more).toEqual([]);
    expect(issue).toMatchObject({
      severity: 'warning',
      message: { values: { orders: 'pin-out' } },
      mend: { key: 'plan.taken-as-off-mend' },
    });
    expect(said(...isolated, 'cover-off', 'pin-out', 'slim-drive-off')).toEqual([]);
    expect(said(...isolated, 'cover-off', 'slim-drive-off', 'pin-out')).toEqual([]);
  });

  test('an open unit with the water on is shut first, then made safe, gate passed or not', () => {
    const plan = planFor(...upToStack, 'open-water');
    const [first, ...then] = plan.steps.filter((step) => step.kind !== 'gate' && !step.done);
    expect(first?.id).toBe('shut#2');
    expect(ids(then).slice(0, 3)).toEqual(['warn#2', 'vent#2', 'unplug#2']);
    expect(keys(plan.says)).toContain('plan.says.shut-first');
    expect(plan.stopped).toBeUndefined();
    expect(ids(planFor('stack-out').steps.filter(({ kind }) => kind !== 'gate')).slice(0, 9)).toContain(
      'shut',
    );
  });
});

describe('what stands already when the work begins', () => {
  const seals = (apart: NonNullable<Visit['apart']>): readonly string[] =>
    ids(planOf([replace('seal')], { apart }).steps);

  test('people are warned before the vent where the water is off already', () => {
    const steps = seals({ water: 'off' });
    expect(steps.indexOf('warn')).toBeLessThan(steps.indexOf('vent'));
    expect(steps.indexOf('photograph')).toBeLessThan(steps.indexOf('vent'));
  });

  test('readings that need the water on are left out once it is off', () => {
    const reading = operation('reading', { phase: 'record', always: true, needs: { water: 'on' } });
    const family = tinyOperations({ operations: [...tinyOperations().operations, reading] });
    expect(ids(planOf([replace('seal')], {}, family).steps)).toContain('reading');
    expect(ids(planOf([replace('seal')], { apart: { water: 'off' } }, family).steps)).not.toContain(
      'reading',
    );
  });

  test('a unit in bypass is not put in bypass again, and work that needs no water off leaves it there', () => {
    const plan = planOf([replace('seal')], { apart: { bypass: 'bypass' } });
    expect(plan.steps.filter(({ id }) => id.startsWith('shut'))).toMatchObject([{ done: true }]);
    expect(ids(plan.steps)).toContain('open-water');
    const dry = planOf([doing('break-bridge')], { apart: { bypass: 'bypass' } });
    expect(ids(dry.steps)).not.toContain('open-water');
  });
});

describe('what hangs on the water', () => {
  const issuesOf = (uses: NonNullable<Visit['site']['uses']>, targets: readonly Target[]) =>
    stageOf(visitOf({ site: { name: 'x', uses } }), repairOf(targets)).issues.map(({ code }) => code);

  test('raw water to a boiler and a shut outlet for fire water are said while both kinds are possible', () => {
    expect(issuesOf(['boiler', 'fire'], [])).toEqual(['raw-pass-use', 'shut-outlet-use']);
  });

  test('nothing is asserted of an outlet that is not settled: the sentence carries the odds', () => {
    const s = visitOf({ site: { name: 'x', uses: ['boiler', 'fire'] } });
    const stage = recognise(s, [], () => 0);
    const known = stage.state === 'done' ? stage.value : undefined;
    const { issues } = finish(planWork(s, known, repairOf([]), sensibleSequencer));
    const odds = issues.map(({ message: { key, values } }) => [key, values?.odds]);
    expect(odds).toMatchObject([
      ['plan.outlet.not-settled', { kind: 'share' }],
      ['plan.outlet.not-settled', { kind: 'share' }],
    ]);
  });

  test('a kind that is settled is said outright', () => {
    const s = visitOf({ site: { name: 'x', uses: ['fire'] } });
    const convert: Target = { kind: 'convert', feature: 'regeneration', to: 'shut-outlet' };
    const [issue] = stageOf(s, repairOf([convert])).issues.filter(({ code }) => code === 'shut-outlet-use');
    expect(issue?.message.key).toBe('plan.shut-outlet.fire');
  });

  test('a conversion to shut-outlet warns of fire water only', () => {
    const convert: Target = { kind: 'convert', feature: 'regeneration', to: 'shut-outlet' };
    expect(issuesOf(['boiler', 'fire'], [convert])).toEqual(['shut-outlet-use']);
  });

  test('people are warned where the water goes off', () => {
    const plan = planOf([replace('seal')], { site: { name: 'x', uses: ['boiler'] } });
    expect(keys(plan.says)).toContain('plan.warn.boiler');
  });
});

describe('a make nobody has described', () => {
  const family = tinyOperations({ operations: surroundings, stack: [], features: [], never: [] });
  const s = visitOf({}, { family, described: false });
  const stage = stageOf(s, repairOf([replace('seal')]));
  const plan = stage.state === 'done' ? stage.value : undefined;

  test('is made safe, passes the gate and is opened by the maker’s instructions', () => {
    const steps = ids(plan?.steps ?? []);
    expect(steps).toContain('gate');
    expect(steps.indexOf('gate')).toBeLessThan(steps.indexOf('shut'));
    expect(keys(plan?.says ?? [])).toContain('plan.says.maker');
    expect(stage.issues).toEqual([]);
  });

  test('is not shut again once it was opened and is back in service', () => {
    const all = ids(plan?.steps ?? []).filter((id) => id !== 'gate');
    const after = stageOf(visitOf(doneBy(...all), { family, described: false }), repairOf([replace('seal')]));
    const left = after.state === 'done' ? after.value.minutes : undefined;
    expect(left).toBe(0);
  });
});

describe('what a definition cannot do', () => {
  test('a part that no operation takes out is said and left out', () => {
    const { issues } = stageOf(visitOf({}), repairOf([replace('gasket')]));
    expect(issues.map(({ code }) => code)).toEqual(['no-operation']);
    const named = stageOf(
      visitOf({}, { family: tinyOperations({ operations: [] }) }),
      repairOf([replace('float')]),
    );
    expect(named.issues[0]?.message.values?.what).toEqual({ key: 'cli.role.float' });
  });

  test('a state that nothing makes is said with the operation that needs it', () => {
    const family = tinyOperations({
      operations: [operation('x', { needs: { power: 'off' }, takesOut: ['motor'], back: back(1) })],
    });
    const { issues } = stageOf(visitOf({}, { family }), repairOf([replace('motor')]));
    expect(issues).toMatchObject([{ code: 'plan-need', message: { key: 'plan.need' } }]);
  });
});
