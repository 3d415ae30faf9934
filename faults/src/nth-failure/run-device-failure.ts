import { isDeepStrictEqual } from 'node:util';
import { MemoryDeviceStore, newDevice, originOf, standingIn, vectorOf } from '@brinewright/journal';
import { MeantToFail, NthFailure } from '@brinewright/server/testing';
import { DeviceScenario } from './device-scenario.ts';
import type { Tried } from './fail-each.ts';
import { type Kept, keptIn, watchStore } from './watched-store.ts';

const mostCalls = 5_000;

/**
 * Lets the first call to a device's storage fail, then the second of another run, and so on until a whole scenario
 * makes no more calls. Each time: the storage is as the last transaction left it, the step can be done again, and in
 * the end nothing is missing and nothing is there twice.
 */
export const runDeviceFailure = async (seed: number): Promise<Tried> => {
  const faults: string[] = [];
  for (let n = 1; n <= mostCalls; n += 1) {
    const nth = new NthFailure();
    nth.arm(n);
    faults.push(...(await runOnce(seed, nth)).map((fault) => `call ${n}: ${fault}`));
    if (!nth.hasFailed) return { calls: n - 1, faults };
  }
  throw new RangeError(`the scenario makes more than ${mostCalls} calls`);
};

const runOnce = async (seed: number, nth: NthFailure): Promise<readonly string[]> => {
  const scenario = await DeviceScenario.begin(seed);
  let isLooking = false;
  const before = (): void => {
    if (!isLooking && nth.isNow()) throw new MeantToFail('device');
  };
  const device = new MemoryDeviceStore(newDevice(scenario.company, scenario.newId()), { before });
  const look = async (): Promise<Kept> => {
    isLooking = true;
    try {
      return await keptIn(device);
    } finally {
      isLooking = false;
    }
  };
  const { store, last } = await watchStore(device, look);
  const faults: string[] = [];
  for (const [name, step] of scenario.steps(device)) {
    const tryStep = (): Promise<boolean> => step(store).then(() => true, isMeant);
    if (await tryStep()) continue;
    if (!isDeepStrictEqual(await look(), last())) faults.push(`${name}: half a state was left`);
    if (!(await tryStep())) faults.push(`${name}: it failed again`);
  }
  return [...faults, ...(await faultsAtEnd(scenario, await look()))];
};

/** False where it failed as it was meant to; any other failure is one of the program. */
const isMeant = (error: unknown): false => {
  if (error instanceof MeantToFail) return false;
  throw error;
};

const faultsAtEnd = async (scenario: DeviceScenario, kept: Kept): Promise<readonly string[]> => {
  const { entries: log } = await scenario.server.pull(scenario.company, { all: 0 }, 10_000);
  const onServer = log.map(({ entry }) => entry.id).toSorted();
  const held = [...kept.entries.values()];
  const here = standingIn(held).map(({ id }) => id);
  const faults: string[] = [];
  if (!log.some(({ entry }) => entry.again !== undefined)) faults.push('nothing was forked');
  if (!isDeepStrictEqual(here.toSorted(), onServer)) faults.push('device and server do not hold the same');
  const origins = log.map(({ entry }) => originOf(entry)).toSorted();
  if (!isDeepStrictEqual(origins, scenario.written.map(({ id }) => id).toSorted()))
    faults.push('not everything that was written is on record once');
  if (held.some(({ refused }) => refused !== undefined)) faults.push('something is refused');
  for (const { stream, vector, beyond } of kept.streams.values()) {
    const entries = held.map(({ entry }) => entry).filter((entry) => entry.stream === stream);
    const right = Object.fromEntries(vectorOf(entries));
    if (!isDeepStrictEqual(vector, right) || Object.keys(beyond).length > 0)
      faults.push(`the vector of ${stream} is not that of what is held`);
  }
  const highest = Math.max(...held.map(({ entry }) => entry.lamport));
  if (kept.state.lamport < highest) faults.push('the order lies behind what is held');
  return faults;
};
