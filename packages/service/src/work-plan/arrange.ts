import type { WorkState } from '@brinewright/equipment';
import type { Work } from '../stage/work.ts';
import { type Precedence, precedenceOf, type Task } from './precedence.ts';
import { type Hand, handAfter, type Sequencer, type SequenceTask } from './sequencer.ts';

/** Tasks in order, block after block, each block put in order by the sequencer with what is in the hand by then. */
export function* arrange(
  tasks: readonly Task[],
  start: WorkState,
  sequencer: Sequencer,
  hand: Hand,
): Work<readonly Task[]> {
  const precedence = precedenceOf(tasks, start);
  const order: Task[] = [];
  let now = hand;
  for (const block of [...new Set(precedence.blocks)].sort((a, b) => a - b)) {
    const result = yield* sequencer.order({ tasks: tasksOfBlock(precedence, block), hand: now });
    for (const id of result.order) {
      const task = precedence.tasks.find((one) => one.id === id);
      if (task === undefined) throw new Error('sequencer-made-up-a-task');
      order.push(task);
      now = handAfter(now, task);
    }
  }
  return order;
}

const tasksOfBlock = ({ tasks, blocks, comesBefore }: Precedence, block: number): readonly SequenceTask[] => {
  const places = [...tasks.keys()].filter((at) => blocks[at] === block);
  return places.flatMap((at) => {
    const task = tasks[at];
    if (task === undefined) return [];
    const before = new Set(
      places.flatMap((other) => (comesBefore(other, at) ? [tasks[other]?.id ?? ''] : [])),
    );
    return [{ ...task, before }];
  });
};
