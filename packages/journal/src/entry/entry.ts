import { z } from 'zod';

/*
 * An entry: one thing somebody entered, written once (SPEC J1). The envelope is loose, so that what a newer version
 * adds to it is kept and passed on; its hash covers all of it.
 */

/** Ids are compared and ordered as text, so only one way of writing them is allowed. */
const uuid = z.string().regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/u);
const count = z.int().positive();
const word = z.string().regex(/^[a-z0-9][a-z0-9-]{0,99}$/u);

export const entrySchema = z.looseObject({
  id: uuid,
  company: uuid,
  /** A site, a stock place, or the workshop itself, whose stream bears the company's id. */
  stream: uuid,
  device: uuid,
  /** 1, 2, 3 … for each device and stream (J2). */
  seq: count,
  lamport: count,
  /** Of every other device: up to which number this one held the stream's entries (J3). */
  seen: z.record(uuid, count),
  /** 'tell-answered/1': what happened, and the version of its payload. */
  kind: z
    .string()
    .max(100)
    .regex(/^[a-z][a-z0-9-]*\/[1-9][0-9]*$/u),
  payload: z.json(),
  author: z.string().min(1).max(200),
  /** For people and durations; never orders anything (J5). */
  wall: z.iso.datetime({ offset: true }),
  zone: z.string().max(100),
  app: z.string().max(100),
  about: z.looseObject({ visit: word.optional(), conditioner: word.optional() }),
  /** Milliseconds the server was ahead of this device's clock when they last met. */
  clock: z.int().optional(),
  /** The entry this one stands for, written anew because its number had been given twice (S1). */
  again: uuid.optional(),
});

export type Entry = Readonly<z.output<typeof entrySchema>>;
export type Json = z.core.util.JSONType;

/** What an entry is about; without a visit it holds for the whole stream. */
export type About = {
  readonly visit?: string | undefined;
  readonly conditioner?: string | undefined;
};

/** An entry before it has a number, a place in the order and a hand that wrote it. */
export type Draft = {
  readonly stream: string;
  readonly kind: string;
  readonly payload: Json;
  readonly about: About;
  readonly again?: string;
};

/** An entry with the text it is stored as and the hash that names its content. */
export type Sealed = {
  readonly entry: Entry;
  /** Canonical form (RFC 8785): what is hashed, stored and sent. */
  readonly text: string;
  readonly hash: string;
  /** The payload was taken out by a redaction; the hash is that of the whole entry (R1). */
  readonly redacted?: true;
};
