import { afterEach, describe, expect, it } from 'vitest';
import type { JournalStore } from '../store/journal-store.ts';
import type { Reply, Transport } from '../sync/transport.ts';
import { transportFileRules } from './transport-file-rules.ts';
import { transportPullRules } from './transport-pull-rules.ts';
import { transportPushRules } from './transport-push-rules.ts';

/** A way to a server opened for one test, as a paired device that is not the owner's goes it. */
export type OpenedWay = {
  readonly transport: Transport;
  readonly company: string;
  /** What lies behind it. */
  readonly store: JournalStore;
  /** Nothing gets through any more. */
  readonly cut: () => Promise<void>;
  /** The device is let in no more. */
  readonly turnAway: () => Promise<void>;
  readonly close: () => Promise<void>;
};

export type OpenWay = () => Promise<OpenedWay>;

/** What every way from a device to the server must do (S1, S3, S4, A1). */
export const transportSuite = (name: string, open: OpenWay): void => {
  describe(`the way to the server: ${name}`, () => {
    const opened: OpenedWay[] = [];
    const given: OpenWay = async () => {
      const one = await open();
      opened.push(one);
      return one;
    };
    afterEach(async () => {
      for (const one of opened.splice(0)) await one.close();
    });
    transportPushRules(given);
    transportPullRules(given);
    transportFileRules(given);
    closedRules(given);
  });
};

const closedRules = (open: OpenWay): void => {
  it('gives no answer where it is cut, and throws nothing', async () => {
    const { transport, cut } = await open();
    await cut();
    for (const ask of everyCall(transport)) expect(await ask()).toEqual({ state: 'no-answer' });
  });

  it('says of a device that is let in no more that it is not allowed', async () => {
    const { transport, turnAway } = await open();
    await turnAway();
    for (const ask of everyCall(transport)) expect(await ask()).toEqual({ state: 'not-allowed' });
  });
};

const everyCall = (transport: Transport): readonly (() => Promise<Reply<unknown>>)[] => [
  () => transport.push({ entries: [] }),
  () => transport.pull({ follow: { all: 0 } }),
  () => transport.offer({ have: [] }),
  () => transport.sendFile('a'.repeat(64), new Uint8Array(3)),
  () => transport.fetchFile('a'.repeat(64)),
];

export const answerIn = <T>(reply: Reply<T>): T => {
  if (reply.state !== 'answered') throw new Error(reply.state);
  return reply.value;
};

export const sent = (entries: readonly { readonly entry: unknown }[]) => ({
  entries: entries.map(({ entry }) => ({ entry })),
});
