import type { Draft } from '@brinewright/journal';
import { type ReadingInput, writtenReading } from '../../../app/reading-entry.ts';
import { aboutUnit, type Place } from '../../../offline/draft-about.ts';
import { correctionOf } from '../../../offline/undo.ts';

/** Every repeat is an entry of its own; the engine takes them together. */
export const takeReading = (
  about: Place,
  test: string,
  readings: readonly ReadingInput[],
  at: string,
): readonly Draft[] =>
  readings.map((reading) => aboutUnit(about, 'reading-taken', { test, ...writtenReading(reading, at) }));

export const correctReading = (
  { stream }: Place,
  entry: string,
  test: string,
  reading: ReadingInput,
  at: string,
): readonly Draft[] => correctionOf(stream, entry, { test, ...writtenReading(reading, at) });
