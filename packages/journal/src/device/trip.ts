import type { Reply, Transport } from '../sync/transport.ts';
import type { DeviceState, DeviceStore, DeviceTransaction } from './device-store.ts';
import { meetEpoch } from './meet-epoch.ts';

export type TripOptions = {
  /** This device's clock, in milliseconds since 1970. */
  readonly now: () => number;
  /** A UUIDv7 at each call; names and ids of what is written again. */
  readonly newId: () => string;
  /** Entries in one message at most; fewer where the way is poor. */
  readonly most?: number;
};

export type Counts = { sent: number; received: number; refused: number; unreadable: number };

/** What a leg of a trip ends with: `turned` where something came up that the next turn has to see to first. */
export type Leg = 'through' | 'turned' | 'no-answer' | 'not-allowed';

/** What the legs of one round share. */
export type Trip = TripOptions & {
  readonly store: DeviceStore;
  readonly transport: Transport;
  readonly counts: Counts;
};

type Meeting = { readonly epoch: string; readonly now: string };

/** The answer, and by how much the server's clock was ahead of ours when it was given (J5). */
export type Met<T> = { readonly value: T; readonly clock: number };

export const ask = async <T extends Meeting>(
  { now }: TripOptions,
  request: () => Promise<Reply<T>>,
): Promise<Met<T> | Exclude<Leg, 'through' | 'turned'>> => {
  const before = now();
  const reply = await request();
  if (reply.state !== 'answered') return reply.state;
  const { value } = reply;
  return { value, clock: Math.round(Date.parse(value.now) - (before + now()) / 2) };
};

/**
 * Whether an answer belongs to the epoch this device is in. One of another epoch is met, unless the device has moved on
 * since it asked: then the answer is an old one that came late, and counts for nothing.
 */
export const isOfEpoch = async (
  tx: DeviceTransaction,
  { value, clock }: Met<Meeting>,
  asked: DeviceState['epoch'],
  { newId }: TripOptions,
): Promise<'same' | 'new' | 'late'> => {
  const state = await tx.state();
  if (state.clock !== clock) await tx.setState({ ...state, clock });
  if (state.epoch === value.epoch) return 'same';
  if (state.epoch !== asked) return 'late';
  await meetEpoch(tx, value.epoch, newId);
  return 'new';
};
