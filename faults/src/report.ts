import type { DiskFullResult } from './disk-full/run-disk-full.ts';
import type { KillsResult } from './kills/run-kills.ts';
import type { Tried } from './nth-failure/fail-each.ts';
import type { BrokenDiskResult } from './nth-failure/run-broken-disk.ts';
import type { NthResult } from './nth-failure/run-nth-failure.ts';
import type { SchedulesResult } from './schedules/run-schedules.ts';
import { states } from './schedules/states.ts';
import type { TracedPush } from './trace/judge-trace.ts';

/** Columns as wide as their widest cell, as Markdown has them: what is printed goes into docs/faults.md as it is. */
export const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string => {
  const lines = [head, ...rows].map((row) => row.map(String));
  const widths = head.map((_, place) => Math.max(3, ...lines.map((row) => row[place]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    `| ${widths.map((width, place) => (cells[place] ?? '').padEnd(width)).join(' | ')} |`;
  const [first = [], ...rest] = lines;
  return [line(first), line(widths.map((width) => '-'.repeat(width))), ...rest.map(line)].join('\n');
};

export const killsTable = (results: readonly KillsResult[]): string =>
  table(
    [
      'store',
      'kills',
      'of them the database',
      'acknowledged',
      'lost',
      'other faults',
      're-opens failed',
      'ms to re-open: median',
      'longest',
    ],
    results.map((one) => [
      one.store,
      one.kills,
      one.ofDatabase,
      one.acknowledged,
      one.lost,
      one.otherFaults,
      one.notReopened,
      one.reopened.median,
      one.reopened.longest,
    ]),
  );

/** What the trace of single pushes showed. */
export const traceLine = (pushes: readonly TracedPush[]): string => {
  const synced = pushes.filter((push) => push.synced !== undefined).length;
  return `trace: ${pushes.length} pushes answered, ${synced} of them after a sync of the log since they came`;
};

export const schedulesTable = (results: readonly SchedulesResult[]): string =>
  table(
    ['store', 'schedules', 'entries', 'failures', 'states reached'],
    results.map(({ server, schedules, entries, failures, reached }) => [
      server,
      schedules,
      entries,
      failures.length,
      `${reached.size} of ${states.length}`,
    ]),
  );

export const nthTable = (results: readonly NthResult[]): string =>
  table(
    ['store', 'step', 'what fails once', 'calls', 'faults'],
    results
      .filter(({ calls }) => calls > 0)
      .map(({ store, step, what, calls, faults }) => [store, step, what, calls, faults.length]),
  );

export const brokenDiskTable = (results: readonly BrokenDiskResult[]): string =>
  table(
    ['command', 'each call', 'calls it makes', 'tried', 'faults'],
    results.map(({ command, how, calls, tried, faults }) => [command, how, calls, tried, faults.length]),
  );

/** What came of each call to a device's storage failing once. */
export const deviceLine = ({ calls, faults }: Tried): string =>
  `storage of a device: ${calls} calls, each failed once, ${faults.length} faults`;

export const diskFullLine = (full: DiskFullResult): string =>
  full.state === 'skipped'
    ? `disk full: skipped, ${full.why}`
    : `disk full: ${full.acknowledged} acknowledged, the next push answered with ${full.refusedWith}, ${full.faults.length} faults`;
