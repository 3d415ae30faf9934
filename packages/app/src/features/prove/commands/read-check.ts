import type { Draft } from '@brinewright/journal';
import { type ReadingInput, writtenReading } from '../../../app/reading-entry.ts';
import { aboutVisit, type Place } from '../../../offline/draft-about.ts';
import { correctionOf } from '../../../offline/undo.ts';

/** Every repeat is an entry of its own; the engine takes them together. */
export const readCheck = (
  about: Place,
  check: string,
  readings: readonly ReadingInput[],
  at: string,
): readonly Draft[] =>
  readings.map((reading) =>
    aboutVisit(about, 'proof-reading-taken', { check, ...writtenReading(reading, at) }),
  );

export const correctCheck = (
  { stream }: Place,
  entry: string,
  check: string,
  reading: ReadingInput,
  at: string,
): readonly Draft[] => correctionOf(stream, entry, { check, ...writtenReading(reading, at) });
