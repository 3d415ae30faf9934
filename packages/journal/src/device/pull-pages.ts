import { readEntry } from '../entry/read-entry.ts';
import { mostStreams, type PullReply, type PullRequest } from '../sync/messages.ts';
import type { DeviceTransaction, StreamState } from './device-store.ts';
import { haveMet } from './meet-epoch.ts';
import { takeName } from './names.ts';
import { takeEntries } from './take-entries.ts';
import { ask, isOfEpoch, type Leg, type Met, type Trip } from './trip.ts';

/** Pulls what is followed, page by page, to its end (S3). */
export const pullAll = async (trip: Trip): Promise<Leg> => {
  const requests = await trip.store.transact(requestsOf);
  for (const request of requests) {
    const leg = await pullPages(trip, request);
    if (leg !== 'through') return leg;
  }
  const epoch = requests[0]?.epoch;
  if (epoch !== undefined) await trip.store.transact((tx) => haveMet(tx, epoch));
  return 'through';
};

/** The whole log in one request; else so many streams in each. One that follows nothing still hears of the epoch. */
const requestsOf = async (tx: DeviceTransaction): Promise<readonly PullRequest[]> => {
  const { all, epoch } = await tx.state();
  const known = epoch === undefined ? {} : { epoch };
  if (all !== undefined) return [{ ...known, follow: { all } }];
  const streams = (await tx.streams())
    .filter(({ follows }) => follows)
    .map(({ stream, after }) => ({ stream, after }));
  const chunks = Math.max(1, Math.ceil(streams.length / mostStreams));
  return Array.from({ length: chunks }, (_, chunk) => ({
    ...known,
    follow: { streams: streams.slice(chunk * mostStreams, (chunk + 1) * mostStreams) },
  }));
};

const pullPages = async (trip: Trip, first: PullRequest): Promise<Leg> => {
  let request = trip.most === undefined ? first : { ...first, most: trip.most };
  for (;;) {
    const asked = request;
    const met = await ask(trip, () => trip.transport.pull(asked));
    if (typeof met === 'string') return met;
    if (met.value.more && met.value.entries.length === 0) return 'no-answer';
    const leg = await trip.store.transact((tx) => takePage(tx, trip, asked, met));
    if (leg !== 'through') return leg;
    if (!met.value.more) return 'through';
    request = { ...asked, follow: further(asked.follow, endOf(met.value)) };
  }
};

/** A page and its cursors are one transaction. */
const takePage = async (
  tx: DeviceTransaction,
  trip: Trip,
  asked: PullRequest,
  met: Met<PullReply>,
): Promise<Leg> => {
  if ((await isOfEpoch(tx, met, asked.epoch, trip)) !== 'same') return 'turned';
  const read = met.value.entries.map(readEntry);
  const sealed = read.flatMap((one) => (one.ok ? [one.sealed] : []));
  const streams = new Map((await tx.streams()).map((stream) => [stream.stream, stream]));
  const { all } = await tx.state();
  const wanted = sealed.filter(
    ({ entry }) => all !== undefined || streams.get(entry.stream)?.follows === true,
  );
  const { fresh, isNameShared } = await takeEntries(tx, wanted, met.value.epoch);
  if (isNameShared) await takeName(tx, trip.newId());
  await moveCursors(tx, asked.follow, endOf(met.value));
  trip.counts.received += fresh;
  trip.counts.unreadable += read.length - sealed.length;
  return 'through';
};

/** The place up to which all that was asked for has come. */
const endOf = ({ entries, more, last }: PullReply): number => (more ? (entries.at(-1)?.position ?? 0) : last);

/** Only onwards, and only where the page began at or before what is held: between, a cursor may have gone to 0. */
const moveCursors = async (
  tx: DeviceTransaction,
  follow: PullRequest['follow'],
  end: number,
): Promise<void> => {
  if ('all' in follow) {
    const state = await tx.state();
    if (state.all !== undefined && state.all >= follow.all)
      await tx.setState({ ...state, all: Math.max(state.all, end) });
    return;
  }
  for (const { stream, after } of follow.streams) {
    const state = await tx.stream(stream);
    if (isFollowedFrom(state, after)) await tx.setStream({ ...state, after: Math.max(state.after, end) });
  }
};

const isFollowedFrom = (state: StreamState | undefined, after: number): state is StreamState =>
  state?.follows === true && state.after >= after;

const further = (follow: PullRequest['follow'], end: number): PullRequest['follow'] =>
  'all' in follow
    ? { all: Math.max(follow.all, end) }
    : { streams: follow.streams.map(({ stream, after }) => ({ stream, after: Math.max(after, end) })) };
