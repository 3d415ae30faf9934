import type { Refusal } from '../entry/refusal.ts';
import { originOf } from '../fold/one-of-each.ts';
import type { DeviceTransaction, Held } from './device-store.ts';

/* How an entry stands with the server, and from one standing to the next. */

/** As it was written: nothing known of what the server thinks. */
export const untold = ({ durable: _, refused: __, displaced: ___, ...sealed }: Held): Held => sealed;

export const asDurable = (held: Held, epoch: string): Held => ({ ...untold(held), durable: epoch });

export const asRefused = (held: Held, refused: Refusal): Held => ({ ...untold(held), refused });

/** Another has its number, and it has yet to be written again. */
export const asForked = (held: Held): Held => ({ ...untold(held), displaced: true, refused: 'forked' });

/** Another has its number, and one written again stands for it. One that the server took stays as it is there. */
export const asReplaced = (held: Held, epoch: string | undefined): Held =>
  epoch !== undefined && held.durable === epoch
    ? asDurable(held, epoch)
    : { ...untold(held), displaced: true };

/** Confirmed by its id. One that has yet to be written again, because it was kept behind a fork, still has to be. */
export const asConfirmed = (held: Held, epoch: string): Held =>
  held.refused === 'forked' ? { ...held, durable: epoch } : asDurable(held, epoch);

export const isReplaced = ({ displaced, refused }: Held): boolean =>
  displaced === true && refused === undefined;

/** Whether another entry of the same origin stands. */
export const hasOther = async (tx: DeviceTransaction, { entry }: Held): Promise<boolean> =>
  (await tx.ofOrigin(originOf(entry))).some((one) => one.entry.id !== entry.id && one.displaced !== true);
