import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';
import type { Happening, HistoryEvent } from './event.ts';

/** Keeps a history in a file, a line at once, so that it is there whatever becomes of the run. */
export type History = {
  readonly file: string;
  readonly record: (event: Happening) => void;
  readonly close: () => void;
};

export const openHistory = (file: string, now: () => number): History => {
  const handle = openSync(file, 'w');
  const started = now();
  return {
    file,
    record: (event) =>
      void writeSync(handle, `${JSON.stringify({ at: Math.round(now() - started), ...event })}\n`),
    close: () => closeSync(handle),
  };
};

export const readHistory = (file: string): readonly HistoryEvent[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line): HistoryEvent => JSON.parse(line));
