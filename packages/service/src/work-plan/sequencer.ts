import type { Work } from '../stage/work.ts';

/** One thing to be put in order. */
export type SequenceTask = {
  readonly id: string;
  readonly side?: string;
  readonly tools: readonly string[];
  /** Tasks of the same problem that come first. */
  readonly before: ReadonlySet<string>;
};

/** What is in the hand, and on which side of the unit one stands. */
export type Hand = { readonly tools: readonly string[]; readonly side?: string | undefined };

export type SequenceProblem = { readonly tasks: readonly SequenceTask[]; readonly hand: Hand };

export type SequenceResult = {
  readonly order: readonly string[];
  /** Minutes of changing tools and sides. */
  readonly cost: number;
  /** No order costs less; otherwise the best that was found. */
  readonly isLeast: boolean;
};

/** Puts tasks in order of least changing. Sensible now; an exact one for any size takes its place later. */
export type Sequencer = {
  readonly version: string;
  order(problem: SequenceProblem): Work<SequenceResult>;
};

/** Minutes that a change takes: common practice, no source. */
export const changeMinutes = { tool: 0.5, side: 1 } as const;

export const toolChanges = (hand: Hand, task: Pick<SequenceTask, 'tools'>): number =>
  task.tools.filter((tool) => !hand.tools.includes(tool)).length;

export const sideChanges = (hand: Hand, task: Pick<SequenceTask, 'side'>): number =>
  task.side !== undefined && hand.side !== undefined && task.side !== hand.side ? 1 : 0;

export const costOfNext = (hand: Hand, task: Pick<SequenceTask, 'tools' | 'side'>): number =>
  changeMinutes.tool * toolChanges(hand, task) + changeMinutes.side * sideChanges(hand, task);

/** Bare hands leave the last tool within reach; a task on no side leaves one where one stands. */
export const handAfter = (hand: Hand, task: Pick<SequenceTask, 'tools' | 'side'>): Hand => ({
  tools: task.tools.length > 0 ? task.tools : hand.tools,
  side: task.side ?? hand.side,
});

export const costOfOrder = (hand: Hand, tasks: readonly SequenceTask[]): number => {
  let cost = 0;
  let now = hand;
  for (const task of tasks) {
    cost += costOfNext(now, task);
    now = handAfter(now, task);
  }
  return cost;
};
