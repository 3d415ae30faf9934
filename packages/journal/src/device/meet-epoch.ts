import { byCodeUnit, byFoldOrder } from '../entry/order.ts';
import type { OfferReply, OfferRequest } from '../sync/messages.ts';
import type { DeviceTransaction, StreamState } from './device-store.ts';
import { isReplaced, untold } from './held.ts';
import { takeName } from './names.ts';
import { highestOf, withNumber } from './stream-state.ts';

/*
 * A server of another epoch was restored, and may lack what it once confirmed (S4). Nothing counts as durable in the
 * new epoch until the server has named it by its id, in an acknowledgement or in a page: a number alone may be that of
 * a twin's entry. So everything the server holds is pulled first, which confirms it or shows that it is forked, and
 * what is left unconfirmed then is sent. Only what the offer shows to be lacking from the first number on goes before.
 */

/** Cursors and acknowledgements are forgotten, and what was refused may be tried again. */
export const meetEpoch = async (tx: DeviceTransaction, epoch: string, newId: () => string): Promise<void> => {
  const { all, ...state } = await tx.state();
  await tx.setState({ ...state, ...(all === undefined ? {} : { all: 0 }), epoch, meeting: true });
  for (const stream of await tx.streams()) await tx.setStream({ ...stream, after: 0 });
  await tx.put((await tx.refused()).map(untold));
  await giveUpNumbers(tx, newId);
};

/**
 * Of a stream that was let go of, the own numbers were kept; but its entries may be lost with the server. Nobody could
 * ever be said to have seen what comes after such a gap (J3), so this device goes on under a new name.
 */
const giveUpNumbers = async (tx: DeviceTransaction, newId: () => string): Promise<void> => {
  const { device } = await tx.state();
  let hasGivenUp = false;
  for (const state of await tx.streams()) {
    const last = highestOf(state, device);
    if (last === 0 || (await tx.at(state.stream, device, last)).length > 0) continue;
    const held = (await tx.entriesOf(state.stream)).map(({ entry }) => entry);
    await tx.setStream(held.reduce(withNumber, { ...state, vector: {}, beyond: {} }));
    hasGivenUp = true;
  }
  if (hasGivenUp) await takeName(tx, newId());
};

/** All that the server holds was pulled. */
export const haveMet = async (tx: DeviceTransaction, epoch: string): Promise<void> => {
  const { meeting, ...state } = await tx.state();
  if (meeting && state.epoch === epoch) await tx.setState(state);
};

/** As many numbers as one offer may hold. */
const mostOffered = 10_000;

/** What is held, by the highest number of each stream and device, in as many messages as it takes; at least one. */
export const offersOf = async (tx: DeviceTransaction): Promise<readonly OfferRequest[]> => {
  const have = (await tx.streams()).filter(({ follows }) => follows).flatMap(numbersIn);
  const chunks = Math.max(1, Math.ceil(have.length / mostOffered));
  return Array.from({ length: chunks }, (_, chunk) => ({
    have: have.slice(chunk * mostOffered, (chunk + 1) * mostOffered),
  }));
};

const numbersIn = (state: StreamState): OfferRequest['have'] =>
  [...new Set([...Object.keys(state.vector), ...Object.keys(state.beyond)])]
    .toSorted(byCodeUnit)
    .map((device) => ({ stream: state.stream, device, seq: highestOf(state, device) }));

/** The ids of what the server holds nothing of, in fold order. */
export const idsWanted = async (
  tx: DeviceTransaction,
  { want }: Pick<OfferReply, 'want'>,
): Promise<readonly string[]> => {
  const lacking = want.filter(({ after }) => after === 0);
  const names = new Set(lacking.map(({ stream, device }) => `${stream}/${device}`));
  const entries = [];
  for (const stream of new Set(lacking.map((one) => one.stream)))
    for (const held of await tx.entriesOf(stream))
      if (names.has(`${stream}/${held.entry.device}`) && !isReplaced(held)) entries.push(held.entry);
  return entries.toSorted(byFoldOrder).map(({ id }) => id);
};
