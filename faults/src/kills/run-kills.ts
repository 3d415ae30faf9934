import type { StoreName } from '../options.ts';
import type { Ground } from './ground.ts';
import { type LivesResult, runLives } from './run-lives.ts';

export type KillsResult = {
  readonly store: StoreName;
  readonly kills: number;
  readonly ofDatabase: number;
  readonly acknowledged: number;
  readonly lost: number;
  /** Everything else that a history or an answer showed to be wrong. */
  readonly otherFaults: number;
  readonly notReopened: number;
  /** In milliseconds, from the start of what was killed to the first answer. */
  readonly reopened: { readonly median: number; readonly longest: number };
  /** What to type to see a failure again. */
  readonly replays: readonly string[];
};

/** One store lives through this many kills; then a new one begins, so that reading it back stays quick. */
const killsPerStore = 25;

export const runKills = async (
  store: StoreName,
  kills: number,
  seed: number,
  newGround: () => Promise<Ground>,
  say: (text: string) => void,
): Promise<KillsResult> => {
  const results: LivesResult[] = [];
  const replays: string[] = [];
  let done = 0;
  while (done < kills) {
    const [share, ownSeed] = [Math.min(killsPerStore, kills - done), seed + results.length];
    const result = await runLives(await newGround(), share, ownSeed);
    results.push(result);
    done += Math.max(1, result.kills);
    if (result.historyFile !== undefined) {
      replays.push(`npm run faults -- --kills ${share} --seed ${ownSeed} --stores ${store}`);
      say(troubleOf(result));
    }
    say(`${store}: ${done} of ${kills} kills`);
    if (result.notReopened !== undefined) break;
  }
  return { store, ...summed(results), replays };
};

const troubleOf = ({ violations, oddities, notReopened, historyFile }: LivesResult): string =>
  [
    ...violations.slice(0, 10).map(({ rule, line, what }) => `  ${rule}, line ${line}: ${what}`),
    ...oddities.slice(0, 10).map((what) => `  ${what}`),
    ...(notReopened === undefined ? [] : [`  not opened again: ${notReopened}`]),
    `  history: ${historyFile}`,
  ].join('\n');

const summed = (results: readonly LivesResult[]): Omit<KillsResult, 'store' | 'replays'> => {
  const sum = (of: (result: LivesResult) => number): number => results.reduce((all, one) => all + of(one), 0);
  const lostIn = ({ violations }: LivesResult): number =>
    violations.filter(({ rule }) => rule === 'lost').length;
  const times = results.flatMap(({ reopened }) => reopened).toSorted((a, b) => a - b);
  return {
    kills: sum(({ kills }) => kills),
    ofDatabase: sum(({ ofDatabase }) => ofDatabase),
    acknowledged: sum(({ acknowledged }) => acknowledged),
    lost: sum(lostIn),
    otherFaults: sum((one) => one.violations.length - lostIn(one) + one.oddities.length),
    notReopened: sum(({ notReopened }) => (notReopened === undefined ? 0 : 1)),
    reopened: {
      median: Math.round(times[Math.floor(times.length / 2)] ?? 0),
      longest: Math.round(times.at(-1) ?? 0),
    },
  };
};
