import type { Reply, Transport } from '../sync/transport.ts';

export type LossyWay = Transport & {
  /** How many messages were sent. */
  readonly calls: () => number;
};

/** The n-th message is lost: 'before' the server had it, or 'after' it did what was asked. Later ones go through. */
export const lossyWay = (inner: Transport, n: number, when: 'before' | 'after'): LossyWay => {
  let calls = 0;
  const sent = async <T>(send: () => Promise<Reply<T>>): Promise<Reply<T>> => {
    calls += 1;
    if (calls !== n) return send();
    if (when === 'after') await send();
    return { state: 'no-answer' };
  };
  return {
    calls: () => calls,
    push: (request) => sent(() => inner.push(request)),
    pull: (request) => sent(() => inner.pull(request)),
    offer: (request) => sent(() => inner.offer(request)),
    sendFile: (hash, bytes) => sent(() => inner.sendFile(hash, bytes)),
    fetchFile: (hash) => sent(() => inner.fetchFile(hash)),
  };
};
