import { fold } from '@brinewright/journal';
import { doOp } from './do-op.ts';
import { heal } from './heal.ts';
import { judgeEnd } from './judge-end.ts';
import type { Op } from './ops.ts';
import { Reached } from './states.ts';
import type { NewTrialServer } from './trial-server.ts';
import { TrialWorld } from './trial-world.ts';

export type ScheduleResult = {
  readonly faults: readonly string[];
  readonly entries: number;
  readonly reached: Reached;
};

/** One schedule from an empty server to its judgement. */
export const runSchedule = async (
  seed: number,
  ops: readonly Op[],
  newServer: NewTrialServer,
): Promise<ScheduleResult> => {
  const reached = new Reached();
  const world = await TrialWorld.begin(seed, newServer, reached);
  try {
    for (const op of ops) await doOp(world, op);
    await heal(world);
    await markEnd(world);
    return { faults: await judgeEnd(world), entries: world.written.size, reached };
  } catch (error) {
    return { faults: [...world.faults, `threw ${textOf(error)}`], entries: world.written.size, reached };
  } finally {
    await world.server.close();
  }
};

const textOf = (error: unknown): string =>
  error instanceof Error ? (error.stack ?? error.message) : String(error);

/** What can only be seen when all is over. */
const markEnd = async (world: TrialWorld): Promise<void> => {
  const log = await world.log();
  const rivals = world.places.sites.flatMap(
    (site) => fold(log.map(({ entry }) => entry).filter(({ stream }) => stream === site)).rivals,
  );
  world.reached.mark('rivals', rivals.length);
  const again = log.filter(({ entry, redacted }) => entry.again !== undefined && redacted);
  world.reached.mark('redacted entry written again', again.length);
};
