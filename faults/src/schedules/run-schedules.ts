import { cutDown } from './cut-down.ts';
import { type Op, opsOf } from './ops.ts';
import { pinnedSeeds } from './pinned-seeds.ts';
import { runSchedule } from './run-schedule.ts';
import { Reached, type State } from './states.ts';
import type { TrialGround } from './trial-server.ts';

export type SchedulesOptions = {
  readonly count: number;
  readonly seed: number;
  readonly server: TrialGround;
  readonly say?: (text: string) => void;
};

export type Failure = {
  readonly seed: number;
  readonly faults: readonly string[];
  /** What to type to see it again. */
  readonly replay: string;
  /** The fewest things that still show a fault. */
  readonly ops: readonly Op[];
};

export type SchedulesResult = {
  readonly server: string;
  readonly schedules: number;
  readonly entries: number;
  readonly failures: readonly Failure[];
  /** States that a long run must reach and that this one did not; a fault like any other. */
  readonly missing: readonly State[];
  readonly reached: ReadonlyMap<State, number>;
};

/** From so many on, chance has no excuse for a state that was not reached. */
const longRun = 200;

/** Seeds that failed once come first, then `count` from `seed` on. */
export const runSchedules = async ({
  count,
  seed,
  server,
  say = () => undefined,
}: SchedulesOptions): Promise<SchedulesResult> => {
  const reached = new Reached();
  const failures: Failure[] = [];
  let entries = 0;
  const pinned = count > 1 ? pinnedSeeds.map(([one]) => one) : [];
  const seeds = [...pinned, ...Array.from({ length: count }, (_, place) => seed + place)];
  for (const [place, one] of seeds.entries()) {
    const ops = opsOf(one);
    const result = await runSchedule(one, ops, server.newServer);
    reached.add(result.reached);
    entries += result.entries;
    if (result.faults.length > 0) {
      const failure = {
        seed: one,
        ...(await cutDown(one, ops, result.faults, server)),
        replay: replayOf(one, server),
      };
      failures.push(failure);
      say(`seed ${one}: ${failure.faults.slice(0, 5).join('\n  ')}\n  again: ${failure.replay}`);
    }
    if ((place + 1) % 100 === 0) say(`${server.name}: ${place + 1} of ${seeds.length} schedules`);
  }
  const missing = seeds.length > longRun ? reached.missing() : [];
  return {
    server: server.name,
    schedules: seeds.length,
    entries,
    failures,
    missing,
    reached: reached.counts,
  };
};

const replayOf = (seed: number, { name }: TrialGround): string =>
  `npm run faults -- --schedules 1 --seed ${seed} --stores ${name}`;
