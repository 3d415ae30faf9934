import type { Operation } from '@brinewright/equipment';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Target } from '../recognition/recognition.ts';
import { finish } from '../stage/work.ts';
import { insideOf, someFamilies } from '../testing/some-operations.ts';
import { situationOf } from '../testing/tiny-family.ts';
import { repairOf, tinyOperations } from '../testing/tiny-operations.ts';
import type { OperationDone } from '../visit/schema.ts';
import { comesOff } from './came-off.ts';
import { checkForVariants } from './check-plan.ts';
import { planWork } from './plan-work.ts';
import { sensibleSequencer } from './sensible-sequencer.ts';
import { isShut } from './state.ts';
import type { PlanStep, WorkPlan } from './work-plan.ts';

const options = { numRuns: 100, seed: 2024 };

const planOf = (
  operations: readonly Operation[],
  targets: readonly Target[],
  done: readonly OperationDone[] = [],
): WorkPlan => {
  const s = situationOf({ family: tinyOperations({ operations }) });
  const visit = { ...s.visit, done: [...done] };
  const stage = finish(planWork({ ...s, visit }, undefined, repairOf(targets), sensibleSequencer));
  if (stage.state === 'blocked') throw new Error('blocked');
  return stage.value;
};

const targetsFrom = (operations: readonly Operation[], picks: readonly number[]): readonly Target[] => {
  const inside = insideOf(operations);
  return picks.flatMap((pick): readonly Target[] => {
    const chosen = inside[pick % inside.length];
    if (chosen === undefined) return [];
    const [role] = chosen.takesOut;
    return role === undefined || pick % 2 === 0
      ? [{ kind: 'operation', operation: chosen.id }]
      : [{ kind: 'replace', role }];
  });
};

const work = fc
  .tuple(
    someFamilies,
    fc.array(fc.nat({ max: 27 }), { minLength: 1, maxLength: 4 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([operations, picks, share]) => ({ operations, targets: targetsFrom(operations, picks), share }));

const writable = (steps: readonly PlanStep[]): readonly OperationDone[] =>
  steps.flatMap((step) => {
    if (step.kind === 'gate') return [];
    const count = 'count' in step ? step.count : undefined;
    return [{ operation: step.id, ...(count === undefined ? {} : { counted: { ...count.totals } }) }];
  });

const prefix = (plan: WorkPlan, share: number): readonly OperationDone[] => {
  const all = writable(plan.steps);
  return all.slice(0, Math.floor(share * (all.length + 1)));
};

const problemsOf = (plan: WorkPlan, operations: readonly Operation[]) =>
  checkForVariants(plan.steps, plan.state, operations, [{ size: 'slim' }, { size: 'broad' }]);

const idsOf = (steps: readonly PlanStep[]): readonly string[] => steps.map(({ id }) => id);

test('no operation stands before its need, no isolation before the gate, nothing stays off', () => {
  fc.assert(
    fc.property(work, ({ operations, targets }) => {
      expect(problemsOf(planOf(operations, targets), operations)).toEqual([]);
    }),
    options,
  );
});

test('the gate stands before the first step that shuts anything, and only in plans that shut', () => {
  fc.assert(
    fc.property(work, ({ operations, targets }) => {
      const { steps } = planOf(operations, targets);
      const gate = steps.findIndex(({ kind }) => kind === 'gate');
      const shut = steps.findIndex((step) => step.kind === 'operation' && isShut(step.operation.makes));
      expect(gate >= 0).toBe(shut >= 0);
      expect(gate).toBeLessThanOrEqual(shut);
    }),
    options,
  );
});

test('what is taken out goes back in once, the last out first in', () => {
  fc.assert(
    fc.property(work, ({ operations, targets }) => {
      const { steps } = planOf(operations, targets);
      const out = steps.flatMap((s) =>
        s.kind === 'operation' && s.operation.takesOut.length > 0 ? [s.id] : [],
      );
      const backIn = steps.flatMap((s) => (s.kind === 'back' ? [s.of.id] : []));
      expect(backIn).toEqual(out.toReversed());
    }),
    options,
  );
});

test('from any moment the plan goes on to the same end, and still keeps the rules', () => {
  fc.assert(
    fc.property(work, ({ operations, targets, share }) => {
      const whole = planOf(operations, targets);
      const rest = planOf(operations, targets, prefix(whole, share));
      expect([...idsOf(rest.steps)].sort()).toEqual([...idsOf(whole.steps)].sort());
      expect(rest.stopped?.at === undefined || rest.stopped.at === 'gate').toBe(true);
      expect(problemsOf(rest, operations)).toEqual([]);
    }),
    options,
  );
});

test('from any moment leaving it safe puts everything back and the water on', () => {
  fc.assert(
    fc.property(work, ({ operations, targets, share }) => {
      const plan = planOf(operations, targets, prefix(planOf(operations, targets), share));
      const { leaveSafe } = plan;
      const done = plan.steps.filter((step) => step.kind === 'gate' || step.done);
      expect(problemsOf({ ...plan, steps: [...done, ...leaveSafe.steps] }, operations)).toEqual([]);
      const opens = leaveSafe.steps.some((s) => s.kind === 'operation' && s.operation.makes.water === 'on');
      expect(opens).toBe(plan.state.water === 'off');
    }),
    options,
  );
});

const dropped = fc.array(fc.boolean(), { minLength: 8, maxLength: 40 });

const withGaps = (done: readonly OperationDone[], drops: readonly boolean[]): readonly OperationDone[] =>
  done.filter((_, at) => drops[at % drops.length] !== true);

/** No variant has both. */
const areApart = ({ fits: a }: Operation, { fits: b }: Operation): boolean =>
  a.size !== undefined && b.size !== undefined && !a.size.some((size) => b.size?.includes(size));

/** What goes back has had one of its ways off before it, which goes back after it. */
const isAccountedFor = (steps: readonly PlanStep[], operations: readonly Operation[]): boolean => {
  const backs = steps.flatMap((step) => (step.kind === 'back' && !step.done ? [step.of] : []));
  const known = new Map(operations.map((one) => [one.id, one]));
  return backs.every((operation, at) => {
    const later = new Set(backs.slice(at + 1).map(({ id }) => id));
    const isFree = (id: string): boolean => {
      const before = known.get(id);
      return before === undefined || !comesOff(before) || areApart(before, operation) || later.has(id);
    };
    return operation.after.length === 0 || operation.after.some((way) => way.every(isFree));
  });
};

const isClosedBeforeWater = (steps: readonly PlanStep[]): boolean => {
  const water = steps.findIndex(
    (step) => step.kind === 'operation' && !step.done && step.operation.makes.water === 'on',
  );
  const last = steps.findLastIndex((step) => step.kind === 'back' && comesOff(step.of));
  return water < 0 ? last < 0 || steps.every((step) => step.kind === 'gate' || step.done) : last < water;
};

const opensWet = ({ kind, ...step }: PlanStep): boolean =>
  kind === 'back' && 'of' in step && !step.done && isShut(step.of.needs);

test('entries forgotten: nothing stays off behind what goes back, and water comes only on a closed unit', () => {
  fc.assert(
    fc.property(work, dropped, ({ operations, targets, share }, drops) => {
      const done = withGaps(prefix(planOf(operations, targets), share), drops);
      const plan = planOf(operations, targets, done);
      for (const steps of [plan.steps, plan.leaveSafe.steps]) {
        expect(isAccountedFor(steps, operations)).toBe(true);
        if (steps.some(opensWet)) expect(isClosedBeforeWater(steps)).toBe(true);
      }
      expect(problemsOf(plan, operations)).toEqual([]);
    }),
    options,
  );
});

test('entries forgotten: a unit open under water is shut before anything else', () => {
  fc.assert(
    fc.property(work, dropped, ({ operations, targets, share }, drops) => {
      const plan = planOf(operations, targets, withGaps(prefix(planOf(operations, targets), share), drops));
      if (!plan.says.some(({ key }) => key === 'plan.says.shut-first')) return;
      const first = plan.steps.find((step) => step.kind !== 'gate' && !step.done);
      expect(first?.id.startsWith('shut')).toBe(true);
      expect(plan.stopped).toBeUndefined();
      expect(plan.leaveSafe.steps[0]?.id.startsWith('shut')).toBe(true);
    }),
    options,
  );
});

test('a change of mind half way puts back what the new targets do not need', () => {
  fc.assert(
    fc.property(work, work, ({ operations, targets, share }, other) => {
      const done = prefix(planOf(operations, targets), share);
      const plan = planOf(
        operations,
        targetsFrom(
          operations,
          other.targets.map((_, at) => at * 3 + 1),
        ),
        done,
      );
      const off = problemsOf(plan, operations).filter(
        ({ kind }) => kind === 'left-off' || kind === 'not-off',
      );
      expect(off).toEqual([]);
    }),
    options,
  );
});

test('counts are those of the list, out and in', () => {
  fc.assert(
    fc.property(work, ({ operations, targets }) => {
      const { stack } = tinyOperations();
      for (const step of planOf(operations, targets).steps) {
        const count = 'count' in step ? step.count : undefined;
        if (count === undefined) continue;
        expect(Object.values(count.totals).reduce((a, b) => a + b, 0)).toBe(stack.length);
        expect(count.pieces).toEqual(step.kind === 'back' ? stack.toReversed() : stack);
      }
    }),
    options,
  );
});

test('any count but that of the list stops the plan at the stack', () => {
  const counts = fc.record({
    plug: fc.nat({ max: 3 }),
    seal: fc.nat({ max: 5 }),
    spacer: fc.nat({ max: 4 }),
  });
  fc.assert(
    fc.property(counts, (counted) => {
      const { operations } = tinyOperations();
      const plan = planOf(operations, [], [{ operation: 'stack-out', counted }]);
      const agrees = counted.plug === 1 && counted.seal === 3 && counted.spacer === 2;
      expect(plan.stopped?.at === 'stack-out').toBe(!agrees);
      expect(plan.leaveSafe.into).toBe(agrees ? 'service' : 'bypass');
    }),
    options,
  );
});

test('the same work gives the same plan, and the order of the definition makes no difference', () => {
  fc.assert(
    fc.property(work, ({ operations, targets }) => {
      const plan = planOf(operations, targets);
      expect(planOf(operations, targets)).toEqual(plan);
      const turned = planOf(operations.toReversed(), targets.toReversed());
      expect(turned.minutes).toBe(plan.minutes);
      expect(idsOf(turned.steps)).toEqual(idsOf(plan.steps));
    }),
    options,
  );
});
