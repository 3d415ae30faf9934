import type { JournalStore } from '@brinewright/journal';

/** A server's store that lives through a schedule: it is stopped, restored, and there again. */
export interface TrialServer {
  readonly company: string;
  /** As it is now; another object after a restart or a restore. */
  readonly store: JournalStore;
  /** Ended and opened again on what it had kept. */
  restart(): Promise<void>;
  backup(): Promise<void>;
  /** Puts the oldest backup in the record's place, under a new epoch; false where none was made. */
  restoreOldest(): Promise<boolean>;
  close(): Promise<void>;
}

export type TrialServerOptions = {
  readonly company: string;
  /** Gives epochs and own devices. */
  readonly draw: () => string;
};

/** Makes an empty server for one schedule. */
export type NewTrialServer = (options: TrialServerOptions) => Promise<TrialServer>;

/** Where the servers of a run live. */
export type TrialGround = {
  readonly name: string;
  readonly newServer: NewTrialServer;
  readonly close: () => Promise<void>;
};
