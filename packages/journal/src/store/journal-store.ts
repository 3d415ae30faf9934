import type { Sealed } from '../entry/entry.ts';
import type { Refusal } from '../entry/refusal.ts';

/*
 * What a store of entries must do. Three do: memory, SQLite, PostgreSQL; one suite holds them to it
 * (`@brinewright/journal/testing`). Every promise that resolves after a write means: on disk.
 */

/** An entry in the log, with its place in it (S2). */
export type Logged = Sealed & {
  readonly position: number;
  /** Who brought it: a paired device, or the workshop itself. */
  readonly pusher: string;
  /** ISO instant of the server. */
  readonly received: string;
};

export type Verdict =
  | { readonly id: string; readonly state: 'kept'; readonly position: number }
  | { readonly id: string; readonly state: 'refused'; readonly reason: Refusal };

/** Where the log stands: cursors count only within one epoch (S4). */
export type LogState = { readonly epoch: string; readonly last: number };

export type Batch = {
  readonly company: string;
  readonly pusher: string;
  /** May it redact? Otherwise only redactions that a workshop's own device wrote are taken (R1). */
  readonly isOwner: boolean;
  readonly received: string;
  readonly entries: readonly Sealed[];
};

/** Each stream from its own position; `undefined` streams means the whole log from one. */
export type Wanted = { readonly all: number } | { readonly streams: ReadonlyMap<string, number> };

/** Of each device the highest n such that its entries 1…n of the stream are held. */
export type Vector = ReadonlyMap<string, number>;

/** What the store's own device knows when it writes. */
export type Heads = {
  readonly device: string;
  readonly lamport: number;
  readonly vectors: ReadonlyMap<string, Vector>;
};

export interface JournalStore {
  /** Makes room for a company; does nothing where it is there. */
  begin(company: string): Promise<void>;
  companies(): Promise<readonly string[]>;
  state(company: string): Promise<LogState>;
  /** One transaction: all verdicts, then on disk, then this resolves (S1, S2). */
  push(batch: Batch): Promise<LogState & { readonly verdicts: readonly Verdict[] }>;
  /** Entries of the store's own device, composed and kept in one transaction (J2). */
  write(
    from: Omit<Batch, 'entries' | 'isOwner'>,
    streams: readonly string[],
    compose: (heads: Heads) => readonly Sealed[],
  ): Promise<LogState & { readonly kept: readonly Logged[] }>;
  /** In order of position, at most `most` (S3). */
  pull(
    company: string,
    wanted: Wanted,
    most: number,
  ): Promise<LogState & { readonly entries: readonly Logged[]; readonly more: boolean }>;
  vectors(company: string, streams: readonly string[]): Promise<ReadonlyMap<string, Vector>>;
  find(company: string, id: string): Promise<Logged | undefined>;
  close(): Promise<void>;
}
