import type { Transport } from '../sync/transport.ts';
import type { DeviceStore } from './device-store.ts';
import { type SyncResult, syncRound } from './sync-round.ts';
import type { TripOptions } from './trip.ts';

/** A wait that can be cut short. */
export type Nap = { readonly over: Promise<void>; readonly cancel: () => void };

export type DriveOptions = TripOptions & {
  readonly sleep: (milliseconds: number) => Nap;
  /** From 0 up to 1, so that many devices do not come back at the same moment. */
  readonly chance: () => number;
  /** Told after each meeting, and when one fails in this device's storage. */
  readonly tell: (result: SyncResult | { readonly state: 'failed'; readonly error: unknown }) => void;
  readonly waits?: Waits;
};

/** In milliseconds. */
export type Waits = {
  /** After a meeting that went well, where no news comes. */
  readonly idle: number;
  /** After the first failure; each further one doubles it. */
  readonly shortest: number;
  readonly longest: number;
};

const usualWaits: Waits = { idle: 60_000, shortest: 2_000, longest: 300_000 };

export type Driver = {
  /** There is news, here or there: meet the server now. */
  readonly nudge: () => void;
  readonly stop: () => void;
  /** Resolves when it was stopped, or when the server has turned this device away. */
  readonly ended: Promise<void>;
};

/** Meets the server again and again, until stopped or turned away. */
export const driveSync = (store: DeviceStore, transport: Transport, options: DriveOptions): Driver => {
  let isStopped = false;
  let isNudged = false;
  let nap: Nap | undefined;
  const run = async (): Promise<void> => {
    let failures = 0;
    while (!isStopped) {
      isNudged = false;
      const state = await meet(store, transport, options);
      if (state === 'not-allowed') return;
      failures = state === 'done' ? 0 : failures + 1;
      if (isNudged || isStopped) continue;
      nap = options.sleep(waitAfter(failures, options));
      await nap.over;
    }
  };
  const wake = (): void => nap?.cancel();
  return {
    nudge: () => {
      isNudged = true;
      wake();
    },
    stop: () => {
      isStopped = true;
      wake();
    },
    ended: run(),
  };
};

const meet = async (
  store: DeviceStore,
  transport: Transport,
  options: DriveOptions,
): Promise<SyncResult['state'] | 'failed'> => {
  try {
    const result = await syncRound(store, transport, options);
    options.tell(result);
    return result.state;
  } catch (error) {
    options.tell({ state: 'failed', error });
    return 'failed';
  }
};

const waitAfter = (failures: number, { waits = usualWaits, chance }: DriveOptions): number => {
  if (failures === 0) return waits.idle;
  const whole = Math.min(waits.longest, waits.shortest * 2 ** (failures - 1));
  return whole * (0.5 + chance() / 2);
};
