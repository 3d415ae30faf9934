import type { FastifyInstance, FastifyReply } from 'fastify';
import type { Workshop } from '../workshop/workshop.ts';
import { ProblemError } from './problem/problems.ts';

const mostListeners = 500;

/** Everybody who listens for news; ended together. */
export type News = {
  readonly listen: (
    reply: FastifyReply,
    workshop: Workshop,
    isStillLetIn: () => Promise<boolean>,
  ) => Promise<void>;
  readonly end: () => void;
};

/**
 * The newest place in the log, whenever it has moved, and a sign of life now and then. It carries no data: losing it
 * costs time only (S3).
 */
export const newsOf = (heartBeat: number): News => {
  const open = new Set<() => void>();
  return {
    listen: async (reply, workshop, isStillLetIn) => {
      if (open.size >= mostListeners)
        throw new ProblemError('too-many', { headers: { 'retry-after': '60' } });
      const first = await workshop.state();
      reply.hijack();
      const { raw } = reply;
      raw.writeHead(200, {
        ...plainHeaders(reply),
        'content-type': 'text/event-stream',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      });
      const tell = ({ epoch, last }: { readonly epoch: string; readonly last: number }): void =>
        void raw.write(`data: ${JSON.stringify({ epoch, position: last })}\n\n`);
      tell(first);
      let told = first;
      const stopListening = workshop.onMoved((state) => {
        told = state;
        tell(state);
      });
      /* Another process may write to the same database, so the beat looks too. */
      const beat = setInterval(() => {
        raw.write(': \n\n');
        lookAgain().catch(atNextBeat);
      }, heartBeat);
      const lookAgain = async (): Promise<void> => {
        if (!(await isStillLetIn())) return end();
        const state = await workshop.state();
        if (state.last === told.last && state.epoch === told.epoch) return;
        told = state;
        tell(state);
      };
      const end = (): void => {
        clearInterval(beat);
        stopListening();
        open.delete(end);
        raw.end();
      };
      open.add(end);
      raw.on('close', end);
    },
    end: () => {
      for (const end of open) end();
    },
  };
};

/** A database that is away for a moment is asked again. */
const atNextBeat = (): void => {};

/** Headers set by hooks so far, security among them. */
const plainHeaders = (reply: FastifyReply): Record<string, string> =>
  Object.fromEntries(
    Object.entries(reply.getHeaders()).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, String(value)]],
    ),
  );

/** A server that is asked to end does not wait for those who only listen. */
export const endStreams = (app: FastifyInstance, news: News): void => {
  app.addHook('preClose', async () => news.end());
};
