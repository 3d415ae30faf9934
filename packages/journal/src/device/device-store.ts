import type { Sealed } from '../entry/entry.ts';
import type { Refusal } from '../entry/refusal.ts';

/*
 * What a device keeps. Memory here; a browser's database in the app. Writing is one transaction with strict
 * durability: it happened whole or not at all, whichever tab asked (J2).
 */

/** An entry as this device holds it. */
export type Held = Sealed & {
  /** The epoch of the server that confirmed it durable; of another epoch it counts for nothing (S4). */
  readonly durable?: string;
  /** Why the server would not take it; it stays here. */
  readonly refused?: Refusal;
  /** Another entry has its number: it will be written again while it is refused as forked, and was otherwise (S1a). */
  readonly displaced?: true;
};

/** What is known of one stream. */
export type StreamState = {
  readonly stream: string;
  readonly follows: boolean;
  /** Place in the server's log up to which this stream was pulled, within `epoch` of the device. */
  readonly after: number;
  /** Of each device, up to which number its entries are held without a gap (J3). */
  readonly vector: Readonly<Record<string, number>>;
  /** Numbers held beyond a gap. */
  readonly beyond: Readonly<Record<string, readonly number[]>>;
  /** Origins whose content was taken out, each with the redaction that says so (R1). */
  readonly gone?: Readonly<Record<string, string>>;
};

export type DeviceState = {
  readonly company: string;
  /** Drawn at installation and never taken from a bundle (J2). */
  readonly device: string;
  /** Names this device had before a fork (S1). */
  readonly formerly: readonly string[];
  readonly epoch: string | undefined;
  /** The highest lamport of any entry held, in any stream (J4). */
  readonly lamport: number;
  /** Milliseconds the server is ahead of this device's clock (J5). */
  readonly clock: number | undefined;
  /** Of a device that follows the whole log: the place up to which it was pulled. */
  readonly all?: number;
  /** The epoch is new here: what the server holds in it was not yet pulled to its end (S4). */
  readonly meeting?: true;
};

export interface DeviceTransaction {
  state(): Promise<DeviceState>;
  setState(state: DeviceState): Promise<void>;
  stream(stream: string): Promise<StreamState | undefined>;
  streams(): Promise<readonly StreamState[]>;
  setStream(state: StreamState): Promise<void>;
  entry(id: string): Promise<Held | undefined>;
  /** All that have this number: one, or more after a fork. */
  at(stream: string, device: string, seq: number): Promise<readonly Held[]>;
  entriesOf(stream: string): Promise<readonly Held[]>;
  /** The entry of this id and all that were written again for it. */
  ofOrigin(origin: string): Promise<readonly Held[]>;
  /** Not confirmed durable in this epoch, not refused and not displaced, in fold order, at most `most`. */
  unsent(epoch: string | undefined, most: number): Promise<readonly Held[]>;
  /** In fold order. */
  refused(): Promise<readonly Held[]>;
  put(entries: readonly Held[]): Promise<void>;
  /** Lets go of all entries of a stream; what is known of it stays until it is set anew. */
  dropEntries(stream: string): Promise<void>;
}

export interface DeviceStore {
  /**
   * Runs the work in one transaction; when it throws, nothing has changed. The work waits for nothing but the
   * transaction itself, because a browser's ends when it is left alone.
   */
  transact<T>(work: (tx: DeviceTransaction) => Promise<T>): Promise<T>;
}
