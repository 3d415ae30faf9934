import { readEntry } from '../entry/read-entry.ts';
import type { JournalStore, Vector, Verdict } from '../store/journal-store.ts';
import {
  mostEntries,
  type OfferReply,
  type OfferRequest,
  type PullReply,
  type PullRequest,
  type PushReply,
  type PushRequest,
} from './messages.ts';

/** For whom the server answers. */
export type Session = { readonly company: string; readonly pusher: string; readonly isOwner: boolean };

/** The server's side of a push: envelopes checked, the rest left to the store (S1). */
export const answerPush = async (
  store: JournalStore,
  { company, pusher, isOwner }: Session,
  { entries }: PushRequest,
  now: string,
): Promise<PushReply> => {
  const read = entries.map(readEntry);
  const sealed = read.flatMap((one) => (one.ok ? [one.sealed] : []));
  const { epoch, last, verdicts } = await store.push({
    company,
    pusher,
    isOwner,
    received: now,
    entries: sealed,
  });
  const kept = verdicts.values();
  return {
    epoch,
    last,
    now,
    verdicts: read.map((one) => (one.ok ? nextOf(kept) : refusedOf(one))),
  };
};

const nextOf = (verdicts: Iterator<Verdict>): Verdict => {
  const next = verdicts.next();
  if (next.done) throw new RangeError('the store judged fewer entries than it was given');
  return next.value;
};

const refusedOf = ({ id, reason }: Extract<ReturnType<typeof readEntry>, { readonly ok: false }>) => ({
  ...(id === undefined ? {} : { id }),
  state: 'refused' as const,
  reason,
});

/** The server's side of a pull; to a device of another epoch it says only that (S3, S4). */
export const answerPull = async (
  store: JournalStore,
  { company }: Session,
  { epoch: known, follow, most }: PullRequest,
  now: string,
): Promise<PullReply> => {
  const wanted =
    'all' in follow
      ? follow
      : { streams: new Map(follow.streams.map(({ stream, after }) => [stream, after])) };
  const { epoch, last, entries, more } = await store.pull(company, wanted, most ?? mostEntries);
  if (known !== undefined && known !== epoch) return { epoch, last, now, entries: [], more: false };
  return {
    epoch,
    last,
    now,
    more,
    entries: entries.map(({ position, entry, hash, redacted }) => ({
      position,
      entry,
      ...(redacted ? { hash } : {}),
    })),
  };
};

/** The server's side of an offer: what it lacks of what the device holds, whoever wrote it (S4). */
export const answerOffer = async (
  store: JournalStore,
  { company }: Session,
  { have }: OfferRequest,
  now: string,
): Promise<OfferReply> => {
  const streams = [...new Set(have.map(({ stream }) => stream))];
  const [{ epoch, last }, vectors] = [await store.state(company), await store.vectors(company, streams)];
  const none: Vector = new Map();
  const want = have.flatMap(({ stream, device, seq }) => {
    const after = (vectors.get(stream) ?? none).get(device) ?? 0;
    return after < seq ? [{ stream, device, after }] : [];
  });
  return { epoch, last, now, want };
};
