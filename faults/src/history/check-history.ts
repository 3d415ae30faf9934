import type { HistoryEvent } from './event.ts';

/*
 * Judges a history and knows nothing of the server. The rules:
 *
 * - lost: what was acknowledged is found by every reading of the whole log that began later in the same epoch.
 * - moved: one id, one position within an epoch.
 * - shared: one position, one id within an epoch.
 * - altered: one id, one hash, for ever, from the moment it was sent.
 * - unsent: what is read was sent by somebody, or was there before anybody sent.
 * - back: a cursor never goes back within an epoch.
 * - gap: positions have no gap: a client whose cursor is at n has read 1…n, and a reading to n found 1…n.
 * - epoch: the epoch stays what it is until a restore.
 */
export const rules = ['lost', 'moved', 'shared', 'altered', 'unsent', 'back', 'gap', 'epoch'] as const;
export type Rule = (typeof rules)[number];

/** `line` counts from 1, as the file does. */
export type Violation = { readonly rule: Rule; readonly line: number; readonly what: string };

/** Everything wrong with a history, in the order in which it shows; an empty list is a good one. */
export const checkHistory = (history: Iterable<HistoryEvent>): readonly Violation[] => {
  const known = empty();
  const found: Violation[] = [];
  let line = 0;
  for (const event of history) {
    line += 1;
    for (const [rule, what] of judge(known, event)) found.push({ rule, line, what });
  }
  return found;
};

type Fault = readonly [rule: Rule, what: string];

type Place = Extract<HistoryEvent, { readonly kind: 'acknowledged' | 'read' }>;

/** What one client has read of one epoch. */
type Reader = { readonly positions: Set<number>; cursor: number; unbroken: number };

type Reading = { readonly found: Set<string>; readonly due: number };

/** What is known up to a line; sets grow, so that a long history is read once. */
type Known = {
  epoch: string | undefined;
  sending: boolean;
  readonly hashes: Map<string, string>;
  readonly placeOf: Map<string, number>;
  readonly idAt: Map<string, string>;
  /** Of each epoch, what was acknowledged in it, in order. */
  readonly acknowledged: Map<string, string[]>;
  readonly readers: Map<string, Reader>;
  readonly readings: Map<string, Reading>;
};

const empty = (): Known => ({
  epoch: undefined,
  sending: false,
  hashes: new Map(),
  placeOf: new Map(),
  idAt: new Map(),
  acknowledged: new Map(),
  readers: new Map(),
  readings: new Map(),
});

const judge = (known: Known, event: HistoryEvent): readonly Fault[] => {
  switch (event.kind) {
    case 'killed':
      return [];
    case 'restored':
      known.epoch = undefined;
      return [];
    case 'opened':
      return sameEpoch(known, event.epoch);
    case 'sent':
      known.sending = true;
      return sameHash(known, event);
    case 'acknowledged':
      return acknowledged(known, event);
    case 'read':
      return read(known, event);
    case 'cursor':
      return cursor(known, event);
    case 'reading':
      return reading(known, event);
    case 'read-through':
      return readThrough(known, event);
  }
};

const keyOf = ({ client, epoch }: { readonly client: string; readonly epoch: string }): string =>
  `${epoch} ${client}`;

const sameEpoch = (known: Known, epoch: string): readonly Fault[] => {
  const before = known.epoch;
  known.epoch = epoch;
  return before === undefined || before === epoch ? [] : [['epoch', `${before} became ${epoch}`]];
};

const sameHash = (known: Known, { id, hash }: { readonly id: string; readonly hash: string }): Fault[] => {
  const before = known.hashes.get(id);
  if (before === undefined) known.hashes.set(id, hash);
  return before === undefined || before === hash ? [] : [['altered', `${id}: ${before} became ${hash}`]];
};

const samePlace = (known: Known, { id, position, epoch }: Place): readonly Fault[] => {
  const faults: Fault[] = [];
  const place = known.placeOf.get(`${epoch} ${id}`);
  if (place !== undefined && place !== position)
    faults.push(['moved', `${id}: from ${place} to ${position}`]);
  const holder = known.idAt.get(`${epoch} ${position}`);
  if (holder !== undefined && holder !== id) faults.push(['shared', `${position}: ${holder} and ${id}`]);
  known.placeOf.set(`${epoch} ${id}`, position);
  known.idAt.set(`${epoch} ${position}`, id);
  return faults;
};

const acknowledged = (known: Known, event: Place): readonly Fault[] => {
  const before = known.acknowledged.get(event.epoch);
  if (before === undefined) known.acknowledged.set(event.epoch, [event.id]);
  else before.push(event.id);
  return [...sameEpoch(known, event.epoch), ...sameHash(known, event), ...samePlace(known, event)];
};

const read = (known: Known, event: Place): readonly Fault[] => {
  const isStrange = known.sending && !known.hashes.has(event.id);
  const reader = readerOf(known, event);
  reader.positions.add(event.position);
  while (reader.positions.has(reader.unbroken + 1)) reader.unbroken += 1;
  known.readings.get(keyOf(event))?.found.add(event.id);
  return [
    ...(isStrange ? [['unsent', event.id] as const] : []),
    ...sameEpoch(known, event.epoch),
    ...sameHash(known, event),
    ...samePlace(known, event),
  ];
};

const readerOf = (known: Known, of: { readonly client: string; readonly epoch: string }): Reader => {
  const key = keyOf(of);
  const reader = known.readers.get(key) ?? { positions: new Set<number>(), cursor: 0, unbroken: 0 };
  known.readers.set(key, reader);
  return reader;
};

const cursor = (known: Known, event: Extract<HistoryEvent, { kind: 'cursor' }>): readonly Fault[] => {
  const reader = readerOf(known, event);
  const { client, position } = event;
  const faults: Fault[] = [];
  if (position < reader.cursor) faults.push(['back', `${client}: from ${reader.cursor} to ${position}`]);
  if (position > reader.unbroken)
    faults.push(['gap', `${client} at ${position} lacks ${reader.unbroken + 1}`]);
  reader.cursor = Math.max(reader.cursor, position);
  return [...faults, ...sameEpoch(known, event.epoch)];
};

/** A reading begins at the start of the log, whatever its client has read before. */
const reading = (known: Known, event: Extract<HistoryEvent, { kind: 'reading' }>): readonly Fault[] => {
  const { cursor } = readerOf(known, event);
  known.readers.set(keyOf(event), { positions: new Set(), cursor, unbroken: 0 });
  known.readings.set(keyOf(event), {
    found: new Set(),
    due: known.acknowledged.get(event.epoch)?.length ?? 0,
  });
  return sameEpoch(known, event.epoch);
};

const readThrough = (
  known: Known,
  event: Extract<HistoryEvent, { kind: 'read-through' }>,
): readonly Fault[] => {
  const reading = known.readings.get(keyOf(event));
  if (reading === undefined) throw new RangeError(`line of ${event.client}: read-through without reading`);
  known.readings.delete(keyOf(event));
  const { unbroken } = readerOf(known, event);
  const due = (known.acknowledged.get(event.epoch) ?? []).slice(0, reading.due);
  return [
    ...due.filter((id) => !reading.found.has(id)).map((id): Fault => ['lost', id]),
    ...(event.last > unbroken ? [['gap', `the log to ${event.last} lacks ${unbroken + 1}`] as const] : []),
    ...sameEpoch(known, event.epoch),
  ];
};
