import type { Entry, Json, Sealed } from '../entry/entry.ts';
import { byFoldOrder } from '../entry/order.ts';
import { seal } from '../entry/seal.ts';
import { originOf } from '../fold/one-of-each.ts';
import { type Chain, chainsOf } from './chains.ts';
import type { DeviceTransaction, Held } from './device-store.ts';
import { asReplaced, hasOther } from './held.ts';
import { namesOf, takeName } from './names.ts';
import { streamIn, withNumber } from './stream-state.ts';

/*
 * Entries whose number another one has are written again (S1a): by every device that holds them, since their author
 * may never come back. To be done when all that the server holds was pulled, for then what is not known as durable is
 * not there.
 *
 * They keep their lamport, so they cannot stand behind later entries of the name they are written under. Each chain of
 * them gets a name of its own, which is this device's own from now on only where its former one was at fault.
 */

/** Writes again what is refused as forked, with all that hangs on it; what stands already is left alone. */
export const writeForkedAgain = async (
  tx: DeviceTransaction,
  newId: () => string,
): Promise<readonly Sealed[]> => {
  const forked: Held[] = [];
  const { epoch } = await tx.state();
  for (const held of await tx.refused()) {
    if (held.refused !== 'forked') continue;
    if (await hasOther(tx, held)) await tx.put([asReplaced(held, epoch)]);
    else forked.push(held);
  }
  const own = await namesOf(tx);
  const hangOn = await unsentIf(tx, ({ entry }) =>
    forked.some(
      (one) => isBehind(entry, one.entry) || (own.has(entry.device) && entry.device === one.entry.device),
    ),
  );
  return moveOver(tx, [...forked, ...hangOn], newId);
};

/**
 * An entry of this device was refused for good. Nobody else will ever hold its number, so what comes after it would lie
 * beyond a gap, where no one can be said to have seen it (J3): that is written under a new name.
 */
export const leaveBehind = async (
  tx: DeviceTransaction,
  { entry }: Held,
  newId: () => string,
): Promise<readonly Sealed[]> => {
  if (!(await namesOf(tx)).has(entry.device)) return [];
  const written = await moveOver(tx, await unsentIf(tx, (one) => isBehind(one.entry, entry)), newId);
  const { device } = await tx.state();
  if (device === entry.device) await takeName(tx, newId());
  return written;
};

const isBehind = (one: Entry, { stream, device, seq }: Entry): boolean =>
  one.stream === stream && one.device === device && one.seq > seq;

const unsentIf = async (
  tx: DeviceTransaction,
  isWanted: (held: Held) => boolean,
): Promise<readonly Held[]> => {
  const { epoch } = await tx.state();
  return (await tx.unsent(epoch, Number.MAX_SAFE_INTEGER)).filter(isWanted);
};

const moveOver = async (
  tx: DeviceTransaction,
  moved: readonly Held[],
  newId: () => string,
): Promise<readonly Sealed[]> => {
  const inOrder = moved.toSorted((a, b) => byFoldOrder(a.entry, b.entry));
  const newIds = new Map(inOrder.map(({ entry }) => [entry.id, newId()]));
  const written: Sealed[] = [];
  for (const chain of chainsOf(inOrder)) {
    const device = newId();
    const again = chain.entries.map((held, place) => writtenAgain(held, chain, place, device, newIds));
    await keep(tx, chain, again, device);
    written.push(...again);
  }
  return written;
};

const keep = async (
  tx: DeviceTransaction,
  chain: Chain,
  again: readonly Sealed[],
  device: string,
): Promise<void> => {
  const state = await tx.state();
  await tx.put([...again, ...chain.entries.map((held) => asReplaced(held, state.epoch))]);
  for (const { entry } of again) await tx.setStream(withNumber(await streamIn(tx, entry.stream), entry));
  if (state.device === chain.device) await takeName(tx, device);
  else await tx.setState({ ...state, formerly: [...state.formerly, device] });
};

const writtenAgain = (
  { entry, redacted }: Held,
  chain: Chain,
  place: number,
  device: string,
  newIds: ReadonlyMap<string, string>,
): Sealed => {
  const before = chain.entries.slice(0, place).filter((one) => one.entry.stream === entry.stream).length;
  const common = (chain.firsts.get(entry.stream) ?? 1) - 1;
  const sealed = seal({
    ...entry,
    id: newIds.get(entry.id) ?? entry.id,
    again: originOf(entry),
    device,
    seq: before + 1,
    seen: { ...entry.seen, ...(common > 0 ? { [entry.device]: common } : {}) },
    payload: pointed(entry, newIds),
  });
  return redacted ? { ...sealed, redacted } : sealed;
};

/** What points at an entry that is written again points at the new one. */
const pointed = ({ kind, payload }: Entry, newIds: ReadonlyMap<string, string>): Json => {
  const points = kind.startsWith('corrected/') || kind.startsWith('redacted/');
  if (!points || typeof payload !== 'object' || payload === null || Array.isArray(payload)) return payload;
  const { target } = payload;
  const now = typeof target === 'string' ? newIds.get(target) : undefined;
  return now === undefined ? payload : { ...payload, target: now };
};
