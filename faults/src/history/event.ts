/*
 * What happened in a run of kills, as the clients and the hand that killed saw it. One line of JSON each, in the
 * order in which it was seen; nothing of it comes from the store's own books.
 */

type AtPlace = {
  readonly client: string;
  readonly id: string;
  readonly hash: string;
  readonly position: number;
  readonly epoch: string;
};

export type Happening =
  /** The server answers, for the first time or again. */
  | { readonly kind: 'opened'; readonly epoch: string; readonly last: number }
  | { readonly kind: 'killed'; readonly what: 'server' | 'database' }
  /** An older state was put in place of what was there; the store draws a new epoch. */
  | { readonly kind: 'restored' }
  /** Leaves the client; whether it arrives is not known. */
  | { readonly kind: 'sent'; readonly client: string; readonly id: string; readonly hash: string }
  | ({ readonly kind: 'acknowledged' } & AtPlace)
  | ({ readonly kind: 'read' } & AtPlace)
  /** The client has kept all up to here, of the whole log. */
  | { readonly kind: 'cursor'; readonly client: string; readonly position: number; readonly epoch: string }
  /** A client begins to read the whole log from its start, and has come to its end. */
  | { readonly kind: 'reading'; readonly client: string; readonly epoch: string }
  | { readonly kind: 'read-through'; readonly client: string; readonly last: number; readonly epoch: string };

/** `at` is in milliseconds since the run began: for people, the checker goes by the order of lines. */
export type HistoryEvent = Happening & { readonly at: number };
