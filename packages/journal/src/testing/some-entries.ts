import type { Entry, Json, Sealed } from '../entry/entry.ts';
import { seal } from '../entry/seal.ts';

/* Entries for tests of stores: well formed, numbered, saying nothing of a visit. */

let drawn = 0;

/** A new id each time, the same ones in every run. */
export const nextUuid = (): string => {
  drawn += 1;
  return `00000000-0000-7000-8000-${drawn.toString(16).padStart(12, '0')}`;
};

/** The hand of one device in one stream; counts by itself. */
export type Hand = { readonly company: string; readonly stream: string; readonly device: string };

export const aHand = (given: Partial<Hand> = {}): Hand => ({
  company: given.company ?? nextUuid(),
  stream: given.stream ?? nextUuid(),
  device: given.device ?? nextUuid(),
});

export const anEntry = (hand: Hand, seq: number, changes: Partial<Entry> = {}): Sealed =>
  seal({
    id: nextUuid(),
    ...hand,
    seq,
    lamport: seq,
    seen: {},
    kind: 'visit-noted/1',
    payload: { text: `note ${seq}` },
    author: 'Test Hand',
    wall: '2026-11-25T10:00:00.000Z',
    zone: 'America/Chicago',
    app: 'test',
    about: { visit: 'first' },
    ...changes,
  });

/** `count` entries numbered from `from`. */
export const entriesOf = (hand: Hand, count: number, from = 1): readonly Sealed[] =>
  Array.from({ length: count }, (_, place) => anEntry(hand, from + place));

export const aNote = (hand: Hand, seq: number, payload: Json): Sealed => anEntry(hand, seq, { payload });

export const aRedaction = (hand: Hand, seq: number, target: string): Sealed =>
  anEntry(hand, seq, { kind: 'redacted/1', payload: { target, reason: 'asked for' }, about: {} });
