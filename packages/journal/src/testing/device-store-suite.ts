import { afterEach, describe } from 'vitest';
import type { DeviceStore, DeviceTransaction, Held } from '../device/device-store.ts';
import { deviceLookUpRules } from './device-look-up-rules.ts';
import { deviceTransactionRules } from './device-transaction-rules.ts';

/** A device's storage opened for one test, with a name and nothing held. */
export type OpenedDevice = {
  readonly store: DeviceStore;
  /** Opens what was kept, as after the app was closed. */
  readonly reopen: () => Promise<DeviceStore>;
  readonly close: () => Promise<void>;
  /** Lets the n-th call to the storage from now on fail, once; without a number none does. */
  readonly failNth?: (n?: number) => void;
};

export type OpenDevice = () => Promise<OpenedDevice>;

/** What every storage of a device must do (J2, S3: one transaction or nothing). */
export const deviceStoreSuite = (name: string, open: OpenDevice): void => {
  describe(`the storage of a device: ${name}`, () => {
    const opened: OpenedDevice[] = [];
    const given: OpenDevice = async () => {
      const one = await open();
      opened.push(one);
      return one;
    };
    afterEach(async () => {
      for (const one of opened.splice(0)) await one.close();
    });
    deviceTransactionRules(given);
    deviceLookUpRules(given);
  });
};

export const put = (store: DeviceStore, ...entries: readonly Held[]): Promise<void> =>
  store.transact((tx) => tx.put(entries));

/** All that is kept, in an order of its own. */
export const allIn = (store: DeviceStore) => store.transact(everything);

const everything = async (tx: DeviceTransaction) => {
  const streams = [...(await tx.streams())].toSorted((a, b) => (a.stream < b.stream ? -1 : 1));
  const held: Held[] = [];
  for (const { stream } of streams) held.push(...sorted(await tx.entriesOf(stream)));
  return { state: await tx.state(), streams, held };
};

export const sorted = (held: readonly Held[]): readonly Held[] =>
  held.toSorted((a, b) => (a.entry.id < b.entry.id ? -1 : 1));
