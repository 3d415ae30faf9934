import {
  costOfNext,
  type Hand,
  handAfter,
  type SequenceProblem,
  type SequenceResult,
  type SequenceTask,
} from './sequencer.ts';

const nodeLimit = 2000;

type Node = { readonly cost: number; readonly next: number };
type Search = {
  readonly tasks: readonly SequenceTask[];
  readonly before: readonly number[];
  readonly nodes: Map<string, Node>;
};

/**
 * Least cost by dynamic programming over what is done and what is in the hand. Undefined when the limit of nodes
 * is met. Tasks come sorted by id, so that of equal orders the first by id is found.
 */
export const exactOrder = ({ tasks, hand }: SequenceProblem): SequenceResult | undefined => {
  const place = new Map(tasks.map(({ id }, at) => [id, at]));
  const before = tasks.map((task) =>
    [...task.before].reduce((mask, id) => mask | (1 << (place.get(id) ?? 0)), 0),
  );
  const search: Search = { tasks, before, nodes: new Map() };
  const root = solve(search, 0, hand);
  return root === undefined ? undefined : { order: walk(search, hand), cost: root.cost, isLeast: true };
};

const keyOf = (done: number, hand: Hand): string => `${done}|${hand.tools.join()}|${hand.side ?? ''}`;

const solve = (search: Search, done: number, hand: Hand): Node | undefined => {
  if (done === 2 ** search.tasks.length - 1) return { cost: 0, next: -1 };
  const key = keyOf(done, hand);
  const known = search.nodes.get(key);
  if (known !== undefined) return known;
  let best: Node | undefined;
  for (const [at, task] of search.tasks.entries()) {
    const mask = search.before[at] ?? 0;
    if ((done & (1 << at)) !== 0 || (done & mask) !== mask) continue;
    const rest = solve(search, done | (1 << at), handAfter(hand, task));
    if (rest === undefined) return undefined;
    const cost = costOfNext(hand, task) + rest.cost;
    if (best === undefined || cost < best.cost - 1e-9) best = { cost, next: at };
  }
  if (best === undefined) throw new Error('tasks-wait-for-one-another');
  search.nodes.set(key, best);
  return search.nodes.size > nodeLimit ? undefined : best;
};

const walk = (search: Search, start: Hand): readonly string[] => {
  const order: string[] = [];
  let done = 0;
  let hand = start;
  for (;;) {
    const task = search.tasks[search.nodes.get(keyOf(done, hand))?.next ?? -1];
    if (task === undefined) return order;
    order.push(task.id);
    done |= 1 << search.tasks.indexOf(task);
    hand = handAfter(hand, task);
  }
};
