import fc from 'fast-check';
import { expect, test } from 'vitest';
import { finish } from '../stage/work.ts';
import { sensibleSequencer } from './sensible-sequencer.ts';
import { costOfOrder, type SequenceTask } from './sequencer.ts';

const tasksUpTo = (most: number) =>
  fc
    .array(
      fc.record({
        tool: fc.option(fc.constantFrom('t1', 't2', 't3')),
        side: fc.option(fc.constantFrom('front', 'back', 'right')),
        before: fc.array(fc.nat({ max: most }), { maxLength: 2 }),
      }),
      { minLength: 1, maxLength: most },
    )
    .map((drawn) =>
      drawn.map(
        ({ tool, side, before }, at): SequenceTask => ({
          id: `t${String(at).padStart(2, '0')}`,
          tools: tool === null ? [] : [tool],
          ...(side === null ? {} : { side }),
          before: new Set(before.filter((b) => b < at).map((b) => `t${String(b).padStart(2, '0')}`)),
        }),
      ),
    );

const inOrder = (tasks: readonly SequenceTask[], order: readonly string[]): readonly SequenceTask[] =>
  order.flatMap((id) => tasks.find((task) => task.id === id) ?? []);

const keepsPrecedence = (order: readonly SequenceTask[]): boolean =>
  order.every((task, at) => {
    const before = order.slice(0, at).map(({ id }) => id);
    return [...task.before].every((id) => before.includes(id));
  });

const ordersOf = (
  left: readonly SequenceTask[],
  so: readonly SequenceTask[] = [],
): readonly (readonly SequenceTask[])[] => {
  if (left.length === 0) return [so];
  const done = new Set(so.map(({ id }) => id));
  return left
    .filter((task) => [...task.before].every((id) => done.has(id)))
    .flatMap((task) =>
      ordersOf(
        left.filter((other) => other !== task),
        [...so, task],
      ),
    );
};

const hand = { tools: [] };

test('up to six tasks no order costs less than the one given', () => {
  fc.assert(
    fc.property(tasksUpTo(6), (tasks) => {
      const result = finish(sensibleSequencer.order({ tasks, hand }));
      const least = Math.min(...ordersOf(tasks).map((order) => costOfOrder(hand, order)));
      expect(result.isLeast).toBe(true);
      expect(result.cost).toBeCloseTo(least, 9);
      expect(costOfOrder(hand, inOrder(tasks, result.order))).toBeCloseTo(least, 9);
    }),
    { numRuns: 100, seed: 11 },
  );
});

test('every task stands once and after what it waits for, however many there are', () => {
  fc.assert(
    fc.property(tasksUpTo(30), (tasks) => {
      const { order } = finish(sensibleSequencer.order({ tasks, hand }));
      expect([...order].sort()).toEqual(tasks.map(({ id }) => id).sort());
      expect(keepsPrecedence(inOrder(tasks, order))).toBe(true);
    }),
    { numRuns: 100, seed: 12 },
  );
});

test('the order in which tasks are handed over makes no difference', () => {
  fc.assert(
    fc.property(tasksUpTo(20), (tasks) => {
      const straight = finish(sensibleSequencer.order({ tasks, hand }));
      const reversed = finish(sensibleSequencer.order({ tasks: tasks.toReversed(), hand }));
      expect(reversed).toEqual(straight);
    }),
    { numRuns: 100, seed: 13 },
  );
});
