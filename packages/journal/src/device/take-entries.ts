import type { Entry, Sealed } from '../entry/entry.ts';
import { originOf } from '../fold/one-of-each.ts';
import { redact, targetOf } from '../store/redaction.ts';
import type { DeviceTransaction, Held } from './device-store.ts';
import { asConfirmed, asForked, asRefused } from './held.ts';
import { highestOf, streamIn, withNumber } from './stream-state.ts';

export type Taken = {
  /** How many were not held before. */
  readonly fresh: number;
  /** There was an entry under this device's name that it never wrote: its profile was copied. */
  readonly isNameShared: boolean;
};

/**
 * Entries that others wrote come in, in whatever order and however often (F1). From the server they bring the epoch in
 * which they are durable; out of a bundle they do not.
 */
export const takeEntries = async (
  tx: DeviceTransaction,
  entries: readonly Sealed[],
  epoch?: string,
): Promise<Taken> => {
  const { company } = await tx.state();
  let fresh = 0;
  let isNameShared = false;
  for (const sealed of entries) {
    if (sealed.entry.company !== company) continue;
    const held = await tx.entry(sealed.entry.id);
    if (held === undefined) {
      isNameShared = (await isOfTwin(tx, sealed.entry)) || isNameShared;
      await takeIn(tx, sealed);
      fresh += 1;
    } else await tx.put([merged(held, sealed, epoch)]);
    if (epoch !== undefined) await confirm(tx, sealed.entry.id, epoch);
  }
  return { fresh, isNameShared };
};

/** The server holds this entry in this epoch: whatever else has its number is displaced, and a redaction takes hold. */
export const confirm = async (tx: DeviceTransaction, id: string, epoch: string): Promise<void> => {
  const held = await tx.entry(id);
  if (held === undefined || held.refused === 'tampered') return;
  const { stream, device, seq } = held.entry;
  const others = (await tx.at(stream, device, seq)).filter(
    (one) => one.entry.id !== id && one.durable !== epoch && one.displaced !== true,
  );
  await tx.put([asConfirmed(held, epoch), ...others.map(asForked)]);
  const target = targetOf(held.entry);
  if (target !== undefined) await takeOut(tx, target, held.entry);
};

/** Above its own highest number no one but a twin writes under this device's name. */
const isOfTwin = async (tx: DeviceTransaction, { stream, device, seq }: Entry): Promise<boolean> => {
  const state = await tx.state();
  return device === state.device && seq > highestOf(await streamIn(tx, stream), device);
};

const takeIn = async (tx: DeviceTransaction, sealed: Sealed): Promise<void> => {
  const { entry } = sealed;
  const stream = withNumber(await streamIn(tx, entry.stream), entry);
  await tx.setStream({ ...stream, follows: true });
  const by = stream.gone?.[entry.id] ?? stream.gone?.[originOf(entry)];
  await tx.put([by === undefined ? sealed : redact(sealed, by)]);
  if (by !== undefined) await takeOutOrigin(tx, originOf(entry), entry.stream, by);
  const state = await tx.state();
  if (entry.lamport > state.lamport) await tx.setState({ ...state, lamport: entry.lamport });
};

/** Of one id and hash the tombstone wins; of one id and two hashes what this device has stays, and is shown (S1). */
const merged = (held: Held, { entry, text, hash, redacted }: Sealed, epoch: string | undefined): Held => {
  if (held.hash !== hash) return epoch === undefined ? held : asRefused(held, 'tampered');
  return redacted ? { ...held, entry, text, redacted } : held;
};

/** The target's content goes, and that of all that stand for the same; one that has not come yet is remembered (R1). */
const takeOut = async (tx: DeviceTransaction, target: string, redaction: Entry): Promise<void> => {
  const held = await tx.entry(target);
  const { origin, stream } =
    held === undefined
      ? { origin: target, stream: redaction.stream }
      : { origin: originOf(held.entry), stream: held.entry.stream };
  await takeOutOrigin(tx, origin, stream, redaction.id);
};

const takeOutOrigin = async (
  tx: DeviceTransaction,
  origin: string,
  stream: string,
  by: string,
): Promise<void> => {
  await remember(tx, origin, stream, by);
  await tx.put((await tx.ofOrigin(origin)).map((one) => redact(one, by)));
};

const remember = async (tx: DeviceTransaction, origin: string, stream: string, by: string): Promise<void> => {
  const state = await streamIn(tx, stream);
  if (state.gone?.[origin] === undefined)
    await tx.setStream({ ...state, gone: { ...state.gone, [origin]: by } });
};
