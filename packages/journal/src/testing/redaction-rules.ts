import { describe, expect, it } from 'vitest';
import type { Sealed } from '../entry/entry.ts';
import { tombstone } from '../entry/read-entry.ts';
import { seal } from '../entry/seal.ts';
import { aHand, anEntry, aRedaction, type Hand, nextUuid } from './some-entries.ts';
import { batchOf, type Given, type Open } from './store-suite.ts';
import { fromWorkshop } from './write-rules.ts';

/** R1: what is taken out stays out, and leaves its place, id and hash. */
export const redactionRules = (open: Open): void => {
  describe('redaction', () => {
    it('puts a tombstone in the place of its target', async () => {
      const { given, hand, secret, redaction } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [secret]));
      await store.push(batchOf(company, [redaction], { isOwner: true }));
      await expectGone(given, secret, redaction, 1);
      const more = await store.push(batchOf(company, [anEntry(hand, 3)]));
      expect(more.last).toBe(3);
    });

    it('works when the target comes later than its redaction', async () => {
      const { given, hand, secret, redaction } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [redaction], { isOwner: true }));
      await store.push(batchOf(company, [anEntry(hand, 3)]));
      const { verdicts } = await store.push(batchOf(company, [secret]));
      expect(verdicts).toEqual([{ id: secret.entry.id, state: 'kept', position: 3 }]);
      await expectGone(given, secret, redaction, 3);
    });

    it('works within one batch, in either order', async () => {
      for (const isFirst of [true, false]) {
        const { given, secret, redaction } = await before(open);
        const entries = isFirst ? [redaction, secret] : [secret, redaction];
        await given.store.push(batchOf(given.company, entries, { isOwner: true }));
        await expectGone(given, secret, redaction, isFirst ? 2 : 1);
      }
    });

    it('is not taken from a device without the right, and the target stays', async () => {
      const { given, secret, redaction } = await before(open);
      const { store, company } = given;
      const { verdicts } = await store.push(batchOf(company, [secret, redaction]));
      expect(verdicts).toEqual([
        { id: secret.entry.id, state: 'kept', position: 1 },
        { id: redaction.entry.id, state: 'refused', reason: 'not-owner' },
      ]);
      expect((await store.find(company, secret.entry.id))?.text).toBe(secret.text);
    });

    it('is taken when the workshop itself wrote it, whoever brings it back', async () => {
      const { given, secret } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [secret]));
      const { kept } = await store.write(fromWorkshop(company), [company], ({ device, lamport }) => [
        aRedactionAt({ company, stream: company, device }, 1, secret.entry.id, lamport + 1),
      ]);
      const [own] = kept;
      if (own === undefined) throw new Error('the redaction was not kept');
      await expectGone(given, secret, own, 1);
      const next = aRedaction({ company, stream: company, device: own.entry.device }, 2, nextUuid());
      const { verdicts } = await store.push(batchOf(company, [next]));
      expect(verdicts).toMatchObject([{ state: 'kept' }]);
    });

    it('takes the whole entry again and stays a tombstone', async () => {
      const { given, secret, redaction } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [secret, redaction], { isOwner: true }));
      const { verdicts } = await store.push(batchOf(company, [secret]));
      expect(verdicts).toEqual([{ id: secret.entry.id, state: 'kept', position: 1 }]);
      await expectGone(given, secret, redaction, 1);
    });

    it('takes a tombstone for an entry it lacks, with the hash of what it was', async () => {
      const { given, secret, redaction } = await before(open);
      const { store, company } = given;
      const { verdicts } = await store.push(batchOf(company, [tombstoneOf(secret, redaction)]));
      expect(verdicts).toEqual([{ id: secret.entry.id, state: 'kept', position: 1 }]);
      await expectGone(given, secret, redaction, 1);
      expect((await store.push(batchOf(company, [secret]))).verdicts).toEqual(verdicts);
      await expectGone(given, secret, redaction, 1);
    });

    it('keeps the whole entry when only a tombstone of it comes without a redaction', async () => {
      const { given, secret, redaction } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [secret]));
      await store.push(batchOf(company, [tombstoneOf(secret, redaction)]));
      expect((await store.find(company, secret.entry.id))?.text).toBe(secret.text);
    });

    it('does not redact a redaction', async () => {
      const { given, hand, secret, redaction } = await before(open);
      const { store, company } = given;
      const second = aRedaction(hand, 3, redaction.entry.id);
      await store.push(batchOf(company, [secret, redaction, second], { isOwner: true }));
      expect((await store.find(company, redaction.entry.id))?.text).toBe(redaction.text);
      await expectGone(given, secret, redaction, 1);
    });

    it('keeps a redaction that names no entry, and does nothing for it', async () => {
      const { given, hand, secret } = await before(open);
      const { store, company } = given;
      const nameless = [{ target: 'all' }, null, 'x', [secret.entry.id], { target: [secret.entry.id] }].map(
        (payload, place) => anEntry(hand, 10 + place, { kind: 'redacted/1', payload }),
      );
      const { last } = await store.push(batchOf(company, [secret, ...nameless], { isOwner: true }));
      expect(last).toBe(6);
      expect((await store.find(company, secret.entry.id))?.text).toBe(secret.text);
    });

    it('takes out what was written again for its target, whether that comes before it or after (S1a)', async () => {
      const { given, hand, secret, redaction } = await before(open);
      const { store, company } = given;
      const again = { payload: { text: 'gate code 4711' }, again: secret.entry.id };
      const [first, second] = [
        anEntry(aHand({ ...hand, device: nextUuid() }), 1, again),
        anEntry(hand, 3, again),
      ];
      await store.push(batchOf(company, [first]));
      await store.push(batchOf(company, [redaction], { isOwner: true }));
      await store.push(batchOf(company, [second]));
      for (const one of [first, second])
        expect(await store.find(company, one.entry.id)).toMatchObject(tombstoneOf(one, redaction));
    });

    it('that names one of them takes out the others', async () => {
      const { given, hand, secret } = await before(open);
      const { store, company } = given;
      const again = { payload: { text: 'gate code 4711' }, again: secret.entry.id };
      const [first, second] = [anEntry(hand, 3, again), anEntry(hand, 4, again)];
      const redaction = aRedaction(hand, 5, first.entry.id);
      await store.push(batchOf(company, [first, redaction], { isOwner: true }));
      await store.push(batchOf(company, [second, secret]));
      for (const one of [first, second, secret])
        expect(await store.find(company, one.entry.id)).toMatchObject(tombstoneOf(one, redaction));
    });

    it('does not reach into another company', async () => {
      const { given, secret } = await before(open);
      const { store, company } = given;
      await store.push(batchOf(company, [secret]));
      const foreign = aHand();
      await store.begin(foreign.company);
      const aimed = aRedaction(foreign, 1, secret.entry.id);
      await store.push(batchOf(foreign.company, [aimed], { isOwner: true }));
      expect((await store.find(company, secret.entry.id))?.text).toBe(secret.text);
    });

    it('is still in force after the store was opened again', async () => {
      const { given, secret, redaction } = await before(open);
      const { store, company, reopen } = given;
      await store.push(batchOf(company, [redaction], { isOwner: true }));
      const again = await reopen();
      await again.push(batchOf(company, [secret]));
      await expectGone({ ...given, store: again }, secret, redaction, 2);
    });
  });
};

const before = async (open: Open) => {
  const hand = aHand();
  const secret = anEntry(hand, 1, { payload: { text: 'gate code 4711' } });
  const redaction = aRedaction(hand, 2, secret.entry.id);
  return { given: await open(hand.company), hand, secret, redaction };
};

const aRedactionAt = (hand: Hand, seq: number, target: string, lamport: number): Sealed =>
  seal({ ...aRedaction(hand, seq, target).entry, lamport });

const tombstoneOf = ({ entry, hash }: Sealed, by: Sealed): Sealed => {
  const gone = seal(tombstone(entry, by.entry.id));
  return { ...gone, hash, redacted: true };
};

const expectGone = async (
  { store, company }: Given,
  secret: Sealed,
  by: Sealed,
  position: number,
): Promise<void> => {
  const left = { ...tombstoneOf(secret, by), position };
  expect(await store.find(company, secret.entry.id)).toMatchObject(left);
  const { entries } = await store.pull(company, { all: 0 }, 50);
  expect(entries.find(({ entry }) => entry.id === secret.entry.id)).toMatchObject(left);
  expect(entries.some(({ text }) => text.includes('4711'))).toBe(false);
};
