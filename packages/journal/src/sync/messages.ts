import { z } from 'zod';
import { refusals } from '../entry/refusal.ts';

/*
 * What devices and server say to one another. The company comes from the session, never from the message.
 */

const uuid = z.uuid();
const position = z.int().nonnegative();
const instant = z.iso.datetime({ offset: true });
const wireEntry = z.strictObject({ entry: z.unknown(), hash: z.string().length(64).optional() });

/** At most this many entries in one message. */
export const mostEntries = 500;
export const mostStreams = 1000;

export const pushRequest = z.strictObject({ entries: z.array(wireEntry).max(mostEntries) });

export const verdict = z.discriminatedUnion('state', [
  z.strictObject({ id: z.string(), state: z.literal('kept'), position }),
  z.strictObject({ id: z.string().optional(), state: z.literal('refused'), reason: z.enum(refusals) }),
]);

const logState = { epoch: z.string(), last: position, now: instant };

/** Verdicts stand in the order of the entries sent. */
export const pushReply = z.strictObject({ ...logState, verdicts: z.array(verdict) });

export const pullRequest = z.strictObject({
  /** The epoch the positions belong to; where the server's is another, no entries come. */
  epoch: z.string().optional(),
  follow: z.union([
    z.strictObject({ all: position }),
    z.strictObject({
      streams: z.array(z.strictObject({ stream: uuid, after: position })).max(mostStreams),
    }),
  ]),
  most: z.int().positive().max(mostEntries).optional(),
});

export const pullReply = z.strictObject({
  ...logState,
  entries: z.array(z.strictObject({ position, entry: z.unknown(), hash: z.string().length(64).optional() })),
  more: z.boolean(),
});

/** After a restore: what this device holds of each stream, so that the server can ask for what it lacks (S4). */
export const offerRequest = z.strictObject({
  have: z.array(z.strictObject({ stream: uuid, device: uuid, seq: position })).max(10_000),
});

export const offerReply = z.strictObject({
  ...logState,
  /** Send the entries after `after` of these. */
  want: z.array(z.strictObject({ stream: uuid, device: uuid, after: position })),
});

export type PushRequest = z.output<typeof pushRequest>;
export type PushReply = z.output<typeof pushReply>;
export type PullRequest = z.output<typeof pullRequest>;
export type PullReply = z.output<typeof pullReply>;
export type OfferRequest = z.output<typeof offerRequest>;
export type OfferReply = z.output<typeof offerReply>;
