import type { WireEntry } from '../entry/read-entry.ts';
import type { Refusal } from '../entry/refusal.ts';
import { isRedaction } from '../store/redaction.ts';
import { mostEntries, type PushReply } from '../sync/messages.ts';
import type { DeviceTransaction, Held } from './device-store.ts';
import { asForked, asRefused } from './held.ts';
import { confirm } from './take-entries.ts';
import { ask, isOfEpoch, type Leg, type Met, type Trip } from './trip.ts';
import { leaveBehind } from './write-again.ts';

/** Characters in one message; the server takes several times as much. */
const mostText = 2_000_000;

/** Sends what is not known as durable until nothing is left, or until something has to be written again (S1). */
export const pushUnsent = (trip: Trip): Promise<Leg> =>
  pushBatches(trip, async (tx) => tx.unsent((await tx.state()).epoch, mostIn(trip)));

const mostIn = ({ most = mostEntries }: Trip): number => most;

/** Sends these first; what was confirmed or refused in the meantime is left out. */
export const pushThese = (trip: Trip, ids: readonly string[]): Promise<Leg> => {
  const left = [...ids];
  return pushBatches(trip, async (tx) => {
    const { epoch } = await tx.state();
    const batch: Held[] = [];
    while (left.length > 0 && batch.length < mostIn(trip)) {
      const held = await tx.entry(left[0] ?? '');
      if (held !== undefined && batch.length > 0 && !goesWith(batch, held)) break;
      left.shift();
      if (held !== undefined && isUnsent(held, epoch)) batch.push(held);
    }
    return batch;
  });
};

const isUnsent = ({ durable, refused, displaced }: Held, epoch: string | undefined): boolean =>
  durable !== epoch && refused === undefined && displaced === undefined;

type NextBatch = (tx: DeviceTransaction) => Promise<readonly Held[]>;

const pushBatches = async (trip: Trip, next: NextBatch): Promise<Leg> => {
  for (;;) {
    const { batch, epoch } = await trip.store.transact(async (tx) => ({
      batch: cut(await next(tx)),
      epoch: (await tx.state()).epoch,
    }));
    if (batch.length === 0) return 'through';
    const met = await ask(trip, () => trip.transport.push({ entries: batch.map(wireOf) }));
    if (typeof met === 'string') return met;
    if (met.value.verdicts.length !== batch.length) return 'no-answer';
    const leg = await trip.store.transact((tx) => record(tx, trip, batch, met, epoch));
    if (leg !== 'through') return leg;
  }
};

/** As much as one message holds. A redaction may be refused, so it goes as the last: nothing is kept behind its gap. */
const cut = (entries: readonly Held[]): readonly Held[] => {
  const batch: Held[] = [];
  for (const held of entries) {
    if (batch.length > 0 && !goesWith(batch, held)) break;
    batch.push(held);
  }
  return batch;
};

const goesWith = (batch: readonly Held[], { text }: Held): boolean => {
  const last = batch.at(-1);
  const length = batch.reduce((sum, one) => sum + one.text.length, 0);
  return (last === undefined || !isRedaction(last.entry)) && length + text.length <= mostText;
};

const wireOf = ({ entry, hash, redacted }: Held): WireEntry => (redacted ? { entry, hash } : { entry });

const record = async (
  tx: DeviceTransaction,
  trip: Trip,
  batch: readonly Held[],
  met: Met<PushReply>,
  asked: string | undefined,
): Promise<Leg> => {
  const { epoch, verdicts } = met.value;
  const met2 = await isOfEpoch(tx, met, asked, trip);
  if (met2 === 'late') return 'turned';
  const forked: Held[] = [];
  for (const [place, verdict] of verdicts.entries()) {
    const held = await heldNow(tx, batch[place]);
    if (held === undefined) continue;
    if (isForked(held, verdict, forked)) {
      forked.push(held);
      await tx.put([asForked(held)]);
    } else if (verdict.state === 'kept') {
      await confirm(tx, held.entry.id, epoch);
      trip.counts.sent += 1;
    } else await refuse(tx, trip, held, verdict.reason);
  }
  return met2 === 'new' || forked.length > 0 ? 'turned' : 'through';
};

const heldNow = async (tx: DeviceTransaction, sent: Held | undefined): Promise<Held | undefined> =>
  sent === undefined ? undefined : tx.entry(sent.entry.id);

/**
 * What was kept right behind a fork is written again too: its number now follows an entry of the twin, which its author
 * had not seen.
 */
const isForked = (
  { entry }: Held,
  verdict: PushReply['verdicts'][number],
  forked: readonly Held[],
): boolean => {
  if (verdict.state === 'refused') return verdict.reason === 'forked';
  return forked.some(
    (one) =>
      one.entry.stream === entry.stream && one.entry.device === entry.device && one.entry.seq < entry.seq,
  );
};

const refuse = async (tx: DeviceTransaction, trip: Trip, held: Held, reason: Refusal): Promise<void> => {
  await tx.put([asRefused(held, reason)]);
  trip.counts.refused += 1;
  await leaveBehind(tx, held, trip.newId);
};
