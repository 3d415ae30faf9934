import { describe, expect, it } from 'vitest';
import type { DeviceStore, DeviceTransaction } from '../device/device-store.ts';
import { newStream, streamIn, withNumber } from '../device/stream-state.ts';
import { writeEntries } from '../device/write-entries.ts';
import { allIn, type OpenDevice, put } from './device-store-suite.ts';
import { aHand, anEntry, entriesOf, nextUuid } from './some-entries.ts';

/** J2, S3: a transaction happened whole or not at all, one after another. */
export const deviceTransactionRules = (open: OpenDevice): void => {
  describe('a transaction', () => {
    it('gives back what the work gives', async () => {
      const { store } = await open();
      expect(await store.transact(async () => 'done')).toBe('done');
    });

    it('sees what it wrote itself', async () => {
      const { store } = await open();
      const one = anEntry(aHand(), 1);
      const seen = await store.transact(async (tx) => {
        await tx.put([one]);
        await tx.setStream(newStream(one.entry.stream));
        return [await tx.entry(one.entry.id), await tx.unsent(undefined, 5), (await tx.streams()).length];
      });
      expect(seen).toEqual([one, [one], 1]);
    });

    it('changes nothing when the work throws, whatever it had done', async () => {
      const { store } = await open();
      const hand = aHand();
      await changeAll(store, hand.stream);
      const before = await allIn(store);
      const failing = store.transact(async (tx) => {
        await changeAllIn(tx, hand.stream);
        await tx.dropEntries(hand.stream);
        await tx.setStream(newStream(nextUuid()));
        throw new TypeError('no further');
      });
      await expect(failing).rejects.toThrow(TypeError);
      expect(await allIn(store)).toEqual(before);
    });

    it('changes nothing when the storage fails, at whichever call, and works the next time', async (context) => {
      const { store, failNth } = await open();
      if (failNth === undefined) return context.skip();
      const { stream } = aHand();
      await changeAll(store, stream);
      for (let n = 1; ; n += 1) {
        expect(n).toBeLessThan(100);
        const before = await allIn(store);
        failNth(n);
        const isDone = await changeAll(store, stream).then(
          () => true,
          () => false,
        );
        failNth();
        if (isDone) {
          expect(n).toBeGreaterThan(4);
          expect((await allIn(store)).state.lamport).toBe(before.state.lamport + 1);
          return;
        }
        expect(await allIn(store)).toEqual(before);
      }
    });

    it('goes on after one that failed', async () => {
      const { store } = await open();
      const failing = store.transact(async () => Promise.reject(new TypeError('no')));
      const next = store.transact(async (tx) => (await tx.state()).lamport);
      await expect(failing).rejects.toThrow(TypeError);
      expect(await next).toBe(0);
    });

    it('is alone: of many at once none gives a number that another gave (J2)', async () => {
      const { store } = await open();
      const stream = nextUuid();
      const written = await Promise.all(
        Array.from({ length: 25 }, () => store.transact((tx) => writeEntries(tx, [note(stream)], hand))),
      );
      const numbers = written.flat().map(({ entry }) => entry.seq);
      expect(numbers.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 25 }, (_, at) => at + 1));
      const lamports = new Set(written.flat().map(({ entry }) => entry.lamport));
      expect(lamports.size).toBe(25);
    });

    it('sees one that was begun before it as over, also where that one failed', async () => {
      const { store } = await open();
      const raise = async (tx: DeviceTransaction): Promise<number> => {
        const state = await tx.state();
        await tx.streams();
        await tx.setState({ ...state, lamport: state.lamport + 1 });
        return state.lamport;
      };
      const spoilt = async (tx: DeviceTransaction): Promise<number> => {
        await raise(tx);
        throw new TypeError('no');
      };
      const said = await Promise.allSettled([
        store.transact(raise),
        store.transact(spoilt),
        store.transact(raise),
      ]);
      expect(said.map((one) => (one.status === 'fulfilled' ? one.value : 'failed'))).toEqual([
        0,
        'failed',
        1,
      ]);
    });

    it('keeps all of it when the app is closed and opened again', async () => {
      const { store, reopen } = await open();
      const { stream } = aHand();
      await changeAll(store, stream);
      const before = await allIn(store);
      expect(before.held).toHaveLength(2);
      expect(await allIn(await reopen())).toEqual(before);
    });

    it('holds 2,000 entries and finds each', async () => {
      const { store, reopen } = await open();
      const hand = aHand();
      const all = entriesOf(hand, 2000);
      for (let from = 0; from < 2000; from += 500) await put(store, ...all.slice(from, from + 500));
      const again = await reopen();
      await again.transact(async (tx) => {
        expect(await tx.entriesOf(hand.stream)).toHaveLength(2000);
        const unsent = await tx.unsent(nextUuid(), 5000);
        expect(unsent.map(({ entry }) => entry.seq)).toEqual(all.map(({ entry }) => entry.seq));
        for (const one of [all[0], all[999], all[1999]]) {
          expect(await tx.entry(one?.entry.id ?? '')).toEqual(one);
          expect(await tx.at(hand.stream, hand.device, one?.entry.seq ?? 0)).toEqual([one]);
        }
      });
    });
  });
};

const hand = {
  author: 'Test Hand',
  wall: '2026-11-25T10:00:00.000Z',
  zone: 'America/Chicago',
  app: 'test',
  newId: nextUuid,
};

const note = (stream: string) => ({ stream, kind: 'visit-noted/1', payload: { text: 'a note' }, about: {} });

const changeAll = (store: DeviceStore, stream: string): Promise<void> =>
  store.transact((tx) => changeAllIn(tx, stream));

/** Writes to all there is: the state, a stream, two entries. */
const changeAllIn = async (tx: DeviceTransaction, stream: string): Promise<void> => {
  const state = await tx.state();
  const seq = state.lamport + 1;
  const changes = { lamport: seq };
  const device = nextUuid();
  const first = anEntry({ company: state.company, stream, device }, 1, changes);
  const other = anEntry({ company: state.company, stream, device }, 2, changes);
  await tx.put([first, { ...other, durable: nextUuid() }]);
  const one = withNumber(withNumber(await streamIn(tx, stream), first.entry), other.entry);
  await tx.setStream({ ...one, after: seq, gone: { [first.entry.id]: other.entry.id } });
  await tx.setState({ ...state, lamport: seq, epoch: nextUuid() });
};
