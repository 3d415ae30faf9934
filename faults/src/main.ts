/*
 * `npm run faults`: servers and databases killed while devices push, simulated devices through every kind of trouble,
 * every file operation and query failing once. Prints counts; ends with 1 on any loss.
 */
import { runDiskFull } from './disk-full/run-disk-full.ts';
import type { Ground } from './kills/ground.ts';
import { postgresGround } from './kills/postgres-ground.ts';
import { runKills } from './kills/run-kills.ts';
import { sqliteGround } from './kills/sqlite-ground.ts';
import { runBrokenDisk } from './nth-failure/run-broken-disk.ts';
import { runDeviceFailure } from './nth-failure/run-device-failure.ts';
import { runNthFailure } from './nth-failure/run-nth-failure.ts';
import { canTrace } from './nth-failure/traced-command.ts';
import { type Options, readOptions, type StoreName, usage } from './options.ts';
import {
  brokenDiskTable,
  deviceLine,
  diskFullLine,
  killsTable,
  nthTable,
  schedulesTable,
  traceLine,
} from './report.ts';
import { runSchedules } from './schedules/run-schedules.ts';
import * as schedules from './schedules/store-grounds.ts';
import type { TrialGround } from './schedules/trial-server.ts';
import { runTrace } from './trace/run-trace.ts';

const say = (text: string): void => console.log(text);
const tracedPushes = 50;
const noStrace = 'skipped, strace is not here: sudo apt-get install --no-install-recommends strace';

const killGrounds: Readonly<Record<StoreName, () => Promise<Ground>>> = {
  sqlite: sqliteGround,
  postgres: postgresGround,
};

const scheduleGrounds: Readonly<Record<StoreName, () => Promise<TrialGround>>> = {
  sqlite: schedules.sqliteGround,
  postgres: schedules.postgresGround,
};

/** Each part prints what it counted and says whether all is well. */
type Part = (options: Options) => Promise<boolean>;

const kills: Part = async ({ kills: count, stores, seed }) => {
  const results = [];
  for (const store of stores) results.push(await runKills(store, count, seed, killGrounds[store], say));
  say(`\n${killsTable(results)}\n`);
  const replays = results.flatMap((one) => one.replays);
  for (const command of replays) say(`again: ${command}`);
  return replays.length === 0;
};

const runsOfSchedules: Part = async ({ schedules: count, stores, seed }) => {
  const results = [];
  for (const store of stores) {
    const server = await scheduleGrounds[store]();
    try {
      results.push(await runSchedules({ count, seed, server, say }));
    } finally {
      await server.close();
    }
  }
  say(`\n${schedulesTable(results)}\n`);
  for (const { missing, server } of results)
    if (missing.length > 0) say(`${server}: never reached: ${missing.join(', ')}`);
  return results.every(({ failures, missing }) => failures.length === 0 && missing.length === 0);
};

const nthFailures: Part = async ({ stores, seed, thorough }) => {
  const results = [];
  for (const store of stores) results.push(...(await runNthFailure(store, seed)));
  say(`\n${nthTable(results)}\n`);
  const device = await runDeviceFailure(seed);
  say(deviceLine(device));
  const full = await runDiskFull(seed);
  say(diskFullLine(full));
  const broken = canTrace() ? await runBrokenDisk(seed, thorough, say) : [];
  say(broken.length === 0 ? `broken disk: ${noStrace}` : `\n${brokenDiskTable(broken)}\n`);
  const faults = [device, full, ...results, ...broken].flatMap((one) => ('faults' in one ? one.faults : []));
  for (const fault of faults) say(`  ${fault}`);
  return faults.length === 0;
};

const trace: Part = async ({ seed }) => {
  if (!canTrace()) {
    say(`trace: ${noStrace}`);
    return true;
  }
  const pushes = await runTrace(tracedPushes, seed);
  say(traceLine(pushes));
  return pushes.length === tracedPushes && pushes.every(({ synced }) => synced !== undefined);
};

const partsOf = (options: Options): readonly Part[] => [
  ...(options.trace ? [trace] : []),
  ...(options.kills > 0 ? [kills] : []),
  ...(options.schedules > 0 ? [runsOfSchedules] : []),
  ...(options.nth ? [nthFailures] : []),
];

const options = readOptions(process.argv.slice(2), Date.now() % 1_000_000);
if (typeof options === 'string') {
  console.error(`${options}\n${usage}`);
  process.exitCode = 2;
} else {
  const parts = partsOf(options);
  say(parts.length === 0 ? usage : `seed ${options.seed}, Node ${process.version}`);
  for (const part of parts) if (!(await part(options))) process.exitCode = 1;
}
