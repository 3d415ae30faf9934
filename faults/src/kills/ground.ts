import type { StoreName } from '../options.ts';
import type { ServerProcess } from './server-process.ts';

/** What is killed: a server on a store of its own, and the store's database where that is a process too. */
export type Ground = {
  readonly store: StoreName;
  /** Starts the server on the data as they are. */
  readonly spawn: () => ServerProcess;
  /** The company whose entries the server at an address takes; begun there if need be. */
  readonly companyAt: (address: string) => Promise<string>;
  readonly database?: { readonly kill: () => Promise<void>; readonly start: () => Promise<void> };
  readonly close: () => Promise<void>;
};
