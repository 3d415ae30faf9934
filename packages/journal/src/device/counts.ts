import type { DeviceStore, Held } from './device-store.ts';
import { isReplaced } from './held.ts';

/** Entries here; of them confirmed by the server as it is now; refused by it. */
export type DeviceCounts = { readonly here: number; readonly sent: number; readonly refused: number };

export const counts = (store: DeviceStore): Promise<DeviceCounts> =>
  store.transact(async (tx) => {
    const { epoch } = await tx.state();
    let [here, sent, refused] = [0, 0, 0];
    for (const { stream } of await tx.streams())
      for (const held of (await tx.entriesOf(stream)).filter((one) => !isReplaced(one))) {
        here += 1;
        if (held.durable !== undefined && held.durable === epoch) sent += 1;
        if (held.refused !== undefined) refused += 1;
      }
    return { here, sent, refused };
  });

/** What a stream is folded from: one that another stands for is left out. */
export const standingIn = (held: readonly Held[]): readonly Held['entry'][] =>
  held.filter((one) => !isReplaced(one)).map(({ entry }) => entry);
