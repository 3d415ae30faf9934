import { describe, expect, test } from 'vitest';
import {
  doing,
  doneBy,
  ids,
  keys,
  planOf,
  replace,
  stageOf,
  upToStack,
  visitOf,
} from '../testing/planned.ts';
import { back, operation, repairOf, tinyOperations } from '../testing/tiny-operations.ts';
import type { Visit } from '../visit/schema.ts';
import type { WorkPlan } from './work-plan.ts';

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
