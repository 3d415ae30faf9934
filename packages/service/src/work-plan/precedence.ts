import type { WorkState } from '@brinewright/equipment';
import { byText } from './operation-kinds.ts';
import type { SequenceTask } from './sequencer.ts';
import { stateKeys, withPressure } from './state.ts';

/** One act to be put in order: an operation, or the reverse of one. */
export type Task = Omit<SequenceTask, 'before'> & {
  readonly after: readonly string[];
  /** Comes after these too, unless that contradicts `after`. */
  readonly rather?: readonly string[];
  readonly needs: WorkState;
  readonly makes: WorkState;
  /** Earlier blocks are finished first; a task moves up to the block of whatever waits for it. */
  readonly block: number;
};

/** Tasks sorted by id, with what comes before each, directly or not, and the block each ended up in. */
export type Precedence = {
  readonly tasks: readonly Task[];
  readonly comesBefore: (a: number, b: number) => boolean;
  readonly blocks: readonly number[];
};

/**
 * Order from what operations come after and from the states they need: whoever needs a state comes after what makes
 * it and before what ends it. Where a state would contradict `after`, `after` stands and the plan reports the need.
 * @throws Error when tasks come after one another.
 */
export const precedenceOf = (given: readonly Task[], start: WorkState): Precedence => {
  const tasks = [...given].sort((a, b) => byText(a.id, b.id));
  const reach = new Reach(tasks.length);
  for (const [first, then] of writtenEdges(tasks, ({ after }) => after))
    if (!reach.add(first, then)) throw new Error('operations-wait-for-one-another');
  for (const [first, then] of writtenEdges(tasks, ({ rather }) => rather ?? [])) reach.add(first, then);
  for (const [first, then] of stateEdges(tasks, start)) reach.add(first, then);
  const comesBefore = (a: number, b: number): boolean => reach.has(a, b);
  return { tasks, comesBefore, blocks: blocksOf(tasks, comesBefore) };
};

type Edge = readonly [first: number, then: number];

const writtenEdges = (tasks: readonly Task[], before: (task: Task) => readonly string[]): readonly Edge[] => {
  const place = new Map(tasks.map(({ id }, at) => [id, at]));
  return tasks.flatMap((task, then) =>
    before(task).flatMap((id): readonly Edge[] => {
      const first = place.get(id);
      return first === undefined ? [] : [[first, then]];
    }),
  );
};

const stateEdges = (tasks: readonly Task[], start: WorkState): readonly Edge[] => {
  const makes = tasks.map((task) => withPressure(task.makes));
  return stateKeys.flatMap((key) => {
    const changers = [...makes.keys()].filter((at) => makes[at]?.[key] !== undefined);
    return tasks.flatMap(({ needs }, then) => {
      const wanted = needs[key];
      if (wanted === undefined) return [];
      const others = changers.filter((at) => at !== then);
      const making = others.filter((at) => makes[at]?.[key] === wanted).map((at): Edge => [at, then]);
      const ending = others.filter((at) => makes[at]?.[key] !== wanted).map((at): Edge => [then, at]);
      return start[key] === wanted ? ending : [...making, ...ending];
    });
  });
};

/** A task is done no later than what waits for it. */
const blocksOf = (
  tasks: readonly Task[],
  comesBefore: (a: number, b: number) => boolean,
): readonly number[] =>
  tasks.map(({ block }, at) =>
    tasks.reduce(
      (least, other, then) => (comesBefore(at, then) ? Math.min(least, other.block) : least),
      block,
    ),
  );

/** Who comes before whom, kept complete as edges are added; an edge that would close a circle is refused. */
class Reach {
  readonly #size: number;
  readonly #table: Uint8Array;

  constructor(size: number) {
    this.#size = size;
    this.#table = new Uint8Array(size * size);
  }

  has(a: number, b: number): boolean {
    return this.#table[a * this.#size + b] === 1;
  }

  add(a: number, b: number): boolean {
    if (a === b || this.has(b, a)) return false;
    if (!this.has(a, b)) this.#join(a, b);
    return true;
  }

  #join(a: number, b: number): void {
    for (let from = 0; from < this.#size; from++) {
      if (from !== a && !this.has(from, a)) continue;
      for (let to = 0; to < this.#size; to++)
        if (to === b || this.has(b, to)) this.#table[from * this.#size + to] = 1;
    }
  }
}
