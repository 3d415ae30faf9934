import type { Transport } from '../sync/transport.ts';
import type { DeviceState, DeviceStore, DeviceTransaction, Held } from './device-store.ts';
import { isReplaced } from './held.ts';
import { newStream, streamIn } from './stream-state.ts';
import { ask, isOfEpoch, type TripOptions } from './trip.ts';

/** From the next meeting on, all of the stream comes here (S3). */
export const follow = async (tx: DeviceTransaction, stream: string): Promise<void> => {
  const state = await streamIn(tx, stream);
  await tx.setStream({ ...state, follows: true, after: state.follows ? state.after : 0 });
};

/** Of a device that holds the whole log, such as one in the office. */
export const followAll = async (tx: DeviceTransaction): Promise<void> => {
  const state = await tx.state();
  if (state.all === undefined) await tx.setState({ ...state, all: 0 });
};

export type Unfollowed =
  | { readonly state: 'let-go' }
  /** Something in it is not confirmed by the server as it is now; all of it stays. */
  | { readonly state: 'unsent'; readonly count: number }
  | { readonly state: 'follows-all' }
  | { readonly state: 'no-answer' | 'not-allowed' };

/**
 * Lets go of a stream's entries once the server holds them all. It is asked in this moment, because one that was
 * restored since the last meeting may have none of them. The own numbers stay, so that none is ever given twice (J2).
 */
export const unfollow = async (
  store: DeviceStore,
  transport: Transport,
  stream: string,
  options: TripOptions,
): Promise<Unfollowed> => {
  const { epoch } = await store.transact((tx) => tx.state());
  const request = { ...(epoch === undefined ? {} : { epoch }), follow: { streams: [] } };
  const met = await ask(options, () => transport.pull(request));
  if (typeof met === 'string') return { state: met };
  return store.transact(async (tx) => {
    await isOfEpoch(tx, met, epoch, options);
    const state = await tx.state();
    if (state.all !== undefined) return { state: 'follows-all' };
    const held = await tx.entriesOf(stream);
    const count = held.filter((one) => !isSafe(one, met.value.epoch)).length;
    if (count > 0) return { state: 'unsent', count };
    await letGo(tx, state, stream);
    return { state: 'let-go' };
  });
};

const isSafe = (held: Held, epoch: string): boolean => held.durable === epoch || isReplaced(held);

const letGo = async (tx: DeviceTransaction, { device }: DeviceState, stream: string): Promise<void> => {
  const { vector, beyond } = await streamIn(tx, stream);
  await tx.dropEntries(stream);
  await tx.setStream({
    ...newStream(stream),
    follows: false,
    vector: ownOf(vector, device),
    beyond: ownOf(beyond, device),
  });
};

const ownOf = <T>(all: Readonly<Record<string, T>>, device: string): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(all).filter(([name]) => name === device));
