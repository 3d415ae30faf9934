import type { Transport } from '../sync/transport.ts';
import type { DeviceStore, DeviceTransaction } from './device-store.ts';
import { untold } from './held.ts';
import { idsWanted, offersOf } from './meet-epoch.ts';
import { pullAll } from './pull-pages.ts';
import { pushThese, pushUnsent } from './push-entries.ts';
import { ask, type Counts, isOfEpoch, type Leg, type Trip, type TripOptions } from './trip.ts';
import { writeForkedAgain } from './write-again.ts';

/** How a meeting with the server went; the counts are of what was done in it, also where it broke off. */
export type SyncResult = Readonly<Counts> & { readonly state: 'done' | 'no-answer' | 'not-allowed' };

/** After a new epoch and two forks a round has taken four turns; more means that others write faster than we read. */
const mostTurns = 10;

/**
 * One meeting with the server: what is new here goes there, what is new there comes here, until neither has more.
 * It may break off anywhere and be begun again. Two at once, in two tabs, do one another no harm.
 */
export const syncRound = async (
  store: DeviceStore,
  transport: Transport,
  options: TripOptions,
): Promise<SyncResult> => {
  const counts: Counts = { sent: 0, received: 0, refused: 0, unreadable: 0 };
  const trip: Trip = { ...options, store, transport, counts };
  await store.transact(tryFarOnesAgain);
  for (let turn = 0; turn < mostTurns; turn += 1) {
    const leg = await takeTurn(trip);
    if (leg === 'no-answer' || leg === 'not-allowed') return { state: leg, ...counts };
    if (leg === 'through') break;
  }
  return { state: 'done', ...counts };
};

/** An order far beyond all others (J4) may lie within reach now that others have written. */
const tryFarOnesAgain = async (tx: DeviceTransaction): Promise<void> => {
  const far = (await tx.refused()).filter(({ refused }) => refused === 'lamport');
  if (far.length > 0) await tx.put(far.map(untold));
};

type Start = 'meet' | 'push' | 'pull';

/** What is forked is written again only when all was pulled, so then pulling comes first. */
const whereToStart = async (tx: DeviceTransaction): Promise<Start> => {
  const { epoch, meeting } = await tx.state();
  if (epoch === undefined || meeting) return 'meet';
  return (await tx.refused()).some(({ refused }) => refused === 'forked') ? 'pull' : 'push';
};

const takeTurn = async (trip: Trip): Promise<Leg> => {
  const start = await trip.store.transact(whereToStart);
  if (start !== 'pull') {
    const leg = await (start === 'meet' ? meet(trip) : pushUnsent(trip));
    if (leg === 'no-answer' || leg === 'not-allowed') return leg;
    if (start === 'push' && (await trip.store.transact(whereToStart)) === 'meet') return 'turned';
  }
  const pulled = await pullAll(trip);
  if (pulled !== 'through') return pulled;
  return trip.store.transact((tx) => finish(tx, trip));
};

const finish = async (tx: DeviceTransaction, { newId }: Trip): Promise<Leg> => {
  await writeForkedAgain(tx, newId);
  const { epoch } = await tx.state();
  return (await tx.unsent(epoch, 1)).length > 0 ? 'turned' : 'through';
};

/** Asks what the server lacks, and sends that first (S4). */
const meet = async (trip: Trip): Promise<Leg> => {
  const { offers, epoch } = await trip.store.transact(async (tx) => ({
    offers: await offersOf(tx),
    epoch: (await tx.state()).epoch,
  }));
  const wanted: string[] = [];
  for (const offer of offers) {
    const met = await ask(trip, () => trip.transport.offer(offer));
    if (typeof met === 'string') return met;
    const more = await trip.store.transact(async (tx) =>
      (await isOfEpoch(tx, met, epoch, trip)) === 'late' ? undefined : idsWanted(tx, met.value),
    );
    if (more === undefined) return 'turned';
    wanted.push(...more);
  }
  return pushThese(trip, wanted);
};
