import { describe, expect, test } from 'vitest';
import { doing, doneBy, ids, keys, planOf, replace, stageOf, visitOf } from '../testing/planned.ts';
import { back, operation, repairOf, surroundings, tinyOperations } from '../testing/tiny-operations.ts';
import type { PlanStep } from './work-plan.ts';

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
