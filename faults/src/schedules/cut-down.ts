import type { Op } from './ops.ts';
import { runSchedule } from './run-schedule.ts';
import type { TrialGround } from './trial-server.ts';

export type CutDown = { readonly ops: readonly Op[]; readonly faults: readonly string[] };

/** Runs at most, since on a database each takes its time. */
const mostRuns = 150;

/** Leaves out ever smaller pieces of a schedule for as long as it still shows a fault. */
export const cutDown = async (
  seed: number,
  given: readonly Op[],
  faults: readonly string[],
  ground: TrialGround,
): Promise<CutDown> => {
  let best: CutDown = { ops: given, faults };
  let runs = 0;
  for (let size = Math.ceil(given.length / 2); size >= 1; size = Math.floor(size / 2))
    for (let from = 0; from < best.ops.length && runs < mostRuns; ) {
      runs += 1;
      const ops = best.ops.toSpliced(from, size);
      const result = await runSchedule(seed, ops, ground.newServer);
      if (result.faults.length > 0) best = { ops, faults: result.faults };
      else from += size;
    }
  return best;
};
