import { exactOrder } from './exact-order.ts';
import { byText } from './operation-kinds.ts';
import {
  costOfNext,
  costOfOrder,
  type Hand,
  handAfter,
  type SequenceProblem,
  type SequenceResult,
  type Sequencer,
  type SequenceTask,
} from './sequencer.ts';

const exactUpTo = 12;
const passes = 3;

/**
 * Exact up to twelve tasks within a limit of nodes; beyond that the cheapest next task at each turn, then every
 * task is moved to where it costs less while precedence holds. Equal cost: the smaller id first.
 *
 * Cost: nodes of the exact search are counted, never seconds. Returns the best order found; `isLeast` says whether
 * it is proved.
 */
export const sensibleSequencer: Sequencer = {
  version: 'sensible/1',
  *order(problem) {
    const tasks = [...problem.tasks].sort((a, b) => byText(a.id, b.id));
    yield { done: 0, of: tasks.length };
    return sensibleOrder({ ...problem, tasks });
  },
};

const sensibleOrder = (problem: SequenceProblem): SequenceResult => {
  const exact = problem.tasks.length <= exactUpTo ? exactOrder(problem) : undefined;
  if (exact !== undefined) return exact;
  const order = improved(problem.hand, greedyOrder(problem));
  return { order: order.map(({ id }) => id), cost: costOfOrder(problem.hand, order), isLeast: false };
};

const greedyOrder = ({ tasks, hand }: SequenceProblem): readonly SequenceTask[] => {
  const placed = new Set<string>();
  const order: SequenceTask[] = [];
  let now = hand;
  while (order.length < tasks.length) {
    const next = cheapest(
      now,
      tasks.filter((task) => !placed.has(task.id) && isReady(task, placed)),
    );
    if (next === undefined) throw new Error('tasks-wait-for-one-another');
    order.push(next);
    placed.add(next.id);
    now = handAfter(now, next);
  }
  return order;
};

const isReady = (task: SequenceTask, placed: ReadonlySet<string>): boolean =>
  [...task.before].every((id) => placed.has(id));

const cheapest = (hand: Hand, tasks: readonly SequenceTask[]): SequenceTask | undefined => {
  let best: SequenceTask | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const task of tasks) {
    const cost = costOfNext(hand, task);
    if (cost < least - 1e-9) [best, least] = [task, cost];
  }
  return best;
};

const improved = (hand: Hand, start: readonly SequenceTask[]): readonly SequenceTask[] => {
  let order = start;
  for (let pass = 0; pass < passes; pass++) {
    const better = start.reduce((so, task) => moved(hand, so, task), order);
    if (better === order) return order;
    order = better;
  }
  return order;
};

/** The task at its cheapest place between those it waits for and those that wait for it. */
const moved = (hand: Hand, order: readonly SequenceTask[], task: SequenceTask): readonly SequenceTask[] => {
  const others = order.filter((other) => other !== task);
  const first = others.findLastIndex((other) => task.before.has(other.id)) + 1;
  const waiting = others.findIndex((other) => other.before.has(task.id));
  const last = waiting < 0 ? others.length : waiting;
  let best = order;
  let least = costOfOrder(hand, order);
  for (let place = first; place <= last; place++) {
    const tried = others.toSpliced(place, 0, task);
    const cost = costOfOrder(hand, tried);
    if (cost < least - 1e-9) [best, least] = [tried, cost];
  }
  return best;
};
