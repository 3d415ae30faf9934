import { describe, expect, it } from 'vitest';
import { redact } from '../store/redaction.ts';
import { aHand, anEntry, aRedaction, entriesOf, nextUuid } from './some-entries.ts';
import { batchOf } from './store-suite.ts';
import { answerIn, type OpenWay, sent } from './transport-suite.ts';

/** S3, S4 as a device sees them. */
export const transportPullRules = (open: OpenWay): void => {
  describe('pull', () => {
    it('gives the whole log page by page in order of position, and says where more is', async () => {
      const { transport, company, store } = await open();
      const { last } = await store.state(company);
      const entries = entriesOf(aHand({ company }), 5);
      await transport.push(sent(entries));
      const first = answerIn(await transport.pull({ follow: { all: last }, most: 2 }));
      expect(first.entries.map(({ position }) => position)).toEqual([last + 1, last + 2]);
      expect(first.more).toBe(true);
      const { epoch } = first;
      const rest = answerIn(await transport.pull({ epoch, follow: { all: last + 2 }, most: 3 }));
      expect(rest.entries.map(({ entry }) => entry)).toEqual(entries.slice(2).map(({ entry }) => entry));
      expect([rest.more, rest.last]).toEqual([false, last + 5]);
    });

    it('gives each stream from its own position, and no other', async () => {
      const { transport, company, store } = await open();
      const { last } = await store.state(company);
      const [one, other, third] = [aHand({ company }), aHand({ company }), aHand({ company })];
      const entries = [1, 2].flatMap((seq) => [one, other, third].map((hand) => anEntry(hand, seq)));
      await transport.push(sent(entries));
      const streams = [
        { stream: one.stream, after: 0 },
        { stream: other.stream, after: last + 2 },
      ];
      const page = answerIn(await transport.pull({ follow: { streams }, most: 2 }));
      expect(page.entries.map(({ position }) => position)).toEqual([last + 1, last + 4]);
      expect(page.more).toBe(true);
      const whole = answerIn(await transport.pull({ follow: { streams } }));
      expect(whole.entries.map(({ position }) => position)).toEqual([last + 1, last + 4, last + 5]);
      expect(whole.more).toBe(false);
      expect(answerIn(await transport.pull({ follow: { streams: [] } })).entries).toEqual([]);
    });

    it('gives a device of another epoch no entries, only the epoch (S4)', async () => {
      const { transport, company, store } = await open();
      await transport.push(sent(entriesOf(aHand({ company }), 2)));
      const pulled = answerIn(await transport.pull({ epoch: nextUuid(), follow: { all: 0 } }));
      const { epoch, last } = await store.state(company);
      expect(pulled).toMatchObject({ entries: [], more: false, epoch, last });
    });

    it('gives a tombstone with the hash of what it was, and no hash else (R1)', async () => {
      const { transport, company, store } = await open();
      const hand = aHand({ company });
      const secret = anEntry(hand, 1);
      const redaction = aRedaction(hand, 2, secret.entry.id);
      await store.push(batchOf(company, [secret, redaction], { isOwner: true }));
      const streams = [{ stream: hand.stream, after: 0 }];
      const { entries } = answerIn(await transport.pull({ follow: { streams } }));
      const { entry } = redact(secret, redaction.entry.id);
      expect(entries.map(({ position: _, ...wire }) => wire)).toEqual([
        { entry, hash: secret.hash },
        { entry: redaction.entry },
      ]);
    });
  });

  describe('offer', () => {
    it('is answered with what the server lacks of each stream and device (S4)', async () => {
      const { transport, company } = await open();
      const hand = aHand({ company });
      await transport.push(sent(entriesOf(hand, 2)));
      const { stream, device } = hand;
      const other = nextUuid();
      const have = [
        { stream, device, seq: 5 },
        { stream, device: other, seq: 1 },
      ];
      const { want } = answerIn(await transport.offer({ have }));
      expect(want).toEqual([
        { stream, device, after: 2 },
        { stream, device: other, after: 0 },
      ]);
      expect(answerIn(await transport.offer({ have: [{ stream, device, seq: 2 }] })).want).toEqual([]);
    });

    it('tells of the epoch and the last place also where nothing is offered', async () => {
      const { transport, company, store } = await open();
      expect(answerIn(await transport.offer({ have: [] }))).toMatchObject({
        ...(await store.state(company)),
        want: [],
      });
    });
  });
};
