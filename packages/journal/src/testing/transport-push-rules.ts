import { describe, expect, it } from 'vitest';
import { redact } from '../store/redaction.ts';
import { aHand, anEntry, aRedaction, entriesOf, nextUuid } from './some-entries.ts';
import { answerIn, type OpenWay, sent } from './transport-suite.ts';

/** S1, S2 as a device sees them. */
export const transportPushRules = (open: OpenWay): void => {
  describe('push', () => {
    it('tells of each entry in the order they were sent, with its place', async () => {
      const { transport, company, store } = await open();
      const { last } = await store.state(company);
      const entries = entriesOf(aHand({ company }), 5);
      const reply = answerIn(await transport.push(sent(entries)));
      expect(reply.verdicts).toEqual(
        entries.map(({ entry }, at) => ({ id: entry.id, state: 'kept', position: last + at + 1 })),
      );
      expect(await store.state(company)).toEqual({ epoch: reply.epoch, last: reply.last });
      expect(Number.isNaN(Date.parse(reply.now))).toBe(false);
      for (const one of entries) expect(await store.find(company, one.entry.id)).toMatchObject(one);
    });

    it('acknowledges what comes again with its old place (S1)', async () => {
      const { transport, company } = await open();
      const entries = entriesOf(aHand({ company }), 3);
      const first = answerIn(await transport.push(sent(entries.slice(0, 2))));
      const again = answerIn(await transport.push(sent(entries)));
      expect(again.verdicts.slice(0, 2)).toEqual(first.verdicts);
      expect(again.last).toBe(first.last + 1);
    });

    it('refuses one for its envelope, says why, and takes those around it (S1)', async () => {
      const { transport, company } = await open();
      const hand = aHand({ company });
      const [first, second] = entriesOf(hand, 2);
      if (first === undefined || second === undefined) throw new RangeError('two');
      await transport.push(sent([first]));
      const { verdicts } = answerIn(
        await transport.push(
          sent([
            { entry: { ...first.entry, author: 'Somebody else' } },
            anEntry(hand, 1),
            { entry: { no: 'entry' } },
            anEntry(aHand(), 1),
            aRedaction({ ...hand, device: nextUuid() }, 1, first.entry.id),
            second,
          ]),
        ),
      );
      const said = verdicts.map((one) => (one.state === 'kept' ? 'kept' : one.reason));
      expect(said).toEqual(['tampered', 'forked', 'malformed', 'other-company', 'not-owner', 'kept']);
      expect(verdicts.map(({ id }) => id)).toContain(second.entry.id);
    });

    it('takes a tombstone with the hash of what it was (R1)', async () => {
      const { transport, company, store } = await open();
      const gone = redact(anEntry(aHand({ company }), 1), nextUuid());
      const entries = [{ entry: gone.entry, hash: gone.hash }];
      expect(answerIn(await transport.push({ entries })).verdicts).toMatchObject([{ state: 'kept' }]);
      expect(await store.find(company, gone.entry.id)).toMatchObject({ hash: gone.hash, redacted: true });
    });

    it('carries what this program does not know of an envelope (J1)', async () => {
      const { transport, company, store } = await open();
      const one = anEntry(aHand({ company }), 1, { mood: { of: ['the day', 3] } });
      await transport.push(sent([one]));
      expect((await store.find(company, one.entry.id))?.text).toBe(one.text);
    });
  });
};
