import type { OfferReply, OfferRequest, PullReply, PullRequest, PushReply, PushRequest } from './messages.ts';

/** No answer is a value too: a device is often out of reach. */
export type Reply<T> =
  | { readonly state: 'answered'; readonly value: T }
  | { readonly state: 'no-answer' }
  /** The session has ended or the device was turned away; everything stays on the device. */
  | { readonly state: 'not-allowed' };

/** The way from a device to the server; HTTP in life, a function call in trials. */
export interface Transport {
  push(request: PushRequest): Promise<Reply<PushReply>>;
  pull(request: PullRequest): Promise<Reply<PullReply>>;
  offer(request: OfferRequest): Promise<Reply<OfferReply>>;
  /** A file by its SHA-256; 'answered' means durable at the server (A1). */
  sendFile(hash: string, bytes: Uint8Array): Promise<Reply<'durable' | 'refused'>>;
  fetchFile(hash: string): Promise<Reply<Uint8Array | undefined>>;
}
