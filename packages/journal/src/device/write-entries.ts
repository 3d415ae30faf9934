import type { Draft, Entry, Sealed } from '../entry/entry.ts';
import { readEntry } from '../entry/read-entry.ts';
import type { DeviceState, DeviceTransaction, StreamState } from './device-store.ts';
import { highestOf, seenIn, streamIn, withNumber } from './stream-state.ts';

/** Who writes, when by the clock on the wall, and with what. */
export type Hand = Pick<Entry, 'author' | 'wall' | 'zone' | 'app'> & {
  /** A UUIDv7 at each call. */
  readonly newId: () => string;
};

/**
 * Drafts as entries of this device, each having seen all that is held before it (J2, J3, J4). They are kept when the
 * transaction is.
 * @throws RangeError where the server would refuse one for its form; nothing may be written then
 */
export const writeEntries = async (
  tx: DeviceTransaction,
  drafts: readonly Draft[],
  hand: Hand,
): Promise<readonly Sealed[]> => {
  const state = await tx.state();
  const streams = new Map<string, StreamState>();
  const written: Sealed[] = [];
  for (const draft of drafts) {
    const stream = streams.get(draft.stream) ?? (await streamIn(tx, draft.stream));
    const lamport = state.lamport + written.length + 1;
    const sealed = compose(draft, hand, { ...state, lamport }, stream);
    written.push(sealed);
    streams.set(draft.stream, { ...withNumber(stream, sealed.entry), follows: true });
  }
  await tx.put(written);
  for (const stream of streams.values()) await tx.setStream(stream);
  await tx.setState({ ...state, lamport: state.lamport + written.length });
  return written;
};

const compose = (
  draft: Draft,
  { newId, ...hand }: Hand,
  { company, device, lamport, clock }: DeviceState,
  stream: StreamState,
): Sealed => {
  const read = readEntry({
    entry: {
      ...draft,
      ...hand,
      id: newId(),
      company,
      device,
      seq: highestOf(stream, device) + 1,
      lamport,
      seen: seenIn(stream, device),
      ...(clock === undefined ? {} : { clock }),
    },
  });
  if (!read.ok) throw new RangeError(`an entry of kind ${draft.kind} cannot be written: ${read.reason}`);
  return read.sealed;
};
