import type { z } from 'zod';
import { sha256Hex } from '../entry/seal.ts';
import type { JournalStore } from '../store/journal-store.ts';
import { answerOffer, answerPull, answerPush, type Session } from './answer.ts';
import { offerReply, offerRequest, pullReply, pullRequest, pushReply, pushRequest } from './messages.ts';
import type { Reply, Transport } from './transport.ts';

export type LoopbackOptions = {
  readonly store: JournalStore;
  readonly session: Session;
  /** The server's clock, ISO. */
  readonly now: () => string;
  /** Files by hash. */
  readonly files?: Map<string, Uint8Array>;
  /** Asked at each message; without it the way is always open. */
  readonly way?: () => 'open' | 'no-answer' | 'not-allowed';
};

/** The way to a store in the same process. Messages go through JSON and their schemas as they would on a wire. */
export const loopback = ({
  store,
  session,
  now,
  files = new Map(),
  way = () => 'open',
}: LoopbackOptions): Transport => {
  const { push, pull, offer }: Pick<Transport, 'push' | 'pull' | 'offer'> = {
    push: answering(pushRequest, pushReply, (request) => answerPush(store, session, request, now())),
    pull: answering(pullRequest, pullReply, (request) => answerPull(store, session, request, now())),
    offer: answering(offerRequest, offerReply, (request) => answerOffer(store, session, request, now())),
  };
  const sent = async <T>(send: () => Promise<Reply<T>>): Promise<Reply<T>> => {
    const state = way();
    return state === 'open' ? send() : { state };
  };
  return {
    push: (request) => sent(() => push(request)),
    pull: (request) => sent(() => pull(request)),
    offer: (request) => sent(() => offer(request)),
    sendFile: (hash, bytes) => sent(() => keepFile(files, hash, bytes)),
    fetchFile: (hash) => sent(async () => ({ state: 'answered', value: files.get(hash) })),
  };
};

const keepFile = async (
  files: Map<string, Uint8Array>,
  hash: string,
  bytes: Uint8Array,
): Promise<Reply<'durable' | 'refused'>> => {
  if (sha256Hex(bytes) !== hash) return { state: 'answered', value: 'refused' };
  files.set(hash, new Uint8Array(bytes));
  return { state: 'answered', value: 'durable' };
};

/** A store that fails gives no answer, as over any wire. */
const answering =
  <Q, A>(asked: z.ZodType<Q>, answered: z.ZodType<A>, answer: (request: Q) => Promise<A>) =>
  async (given: Q): Promise<Reply<A>> => {
    try {
      const request = asked.parse(overWire(given));
      return { state: 'answered', value: answered.parse(overWire(await answer(request))) };
    } catch {
      return { state: 'no-answer' };
    }
  };

const overWire = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
