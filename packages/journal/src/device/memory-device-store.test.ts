import { expect, it } from 'vitest';
import { allIn, deviceStoreSuite, put } from '../testing/device-store-suite.ts';
import { aHand, anEntry, nextUuid } from '../testing/some-entries.ts';
import { MemoryDeviceStore, newDevice } from './memory-device-store.ts';

deviceStoreSuite('memory', async () => {
  let left: number | undefined;
  const before = (): void => {
    if (left === undefined) return;
    left -= 1;
    if (left === 0) throw new RangeError('meant to fail');
  };
  const store = new MemoryDeviceStore(newDevice(nextUuid(), nextUuid()), { before });
  return {
    store,
    reopen: async () => store.clone(),
    close: async () => undefined,
    failNth: (n) => {
      left = n;
    },
  };
});

it('lets nobody use a transaction that is over', async () => {
  const store = new MemoryDeviceStore(newDevice(nextUuid(), nextUuid()));
  const tx = await store.transact(async (open) => open);
  await expect(tx.put([anEntry(aHand(), 1)])).rejects.toThrow('the transaction is over');
});

it('copies a profile whole, and neither sees what the other does then', async () => {
  const store = new MemoryDeviceStore(newDevice(nextUuid(), nextUuid()));
  const hand = aHand();
  await put(store, anEntry(hand, 1));
  const copy = store.clone();
  expect(await allIn(copy)).toEqual(await allIn(store));
  await put(copy, anEntry(hand, 2));
  expect(await store.transact((tx) => tx.entriesOf(hand.stream))).toHaveLength(1);
  expect(await copy.transact((tx) => tx.entriesOf(hand.stream))).toHaveLength(2);
});
