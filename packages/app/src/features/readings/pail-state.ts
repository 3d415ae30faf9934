import type { PailRun } from '../../engine/views/pail-view.ts';

/** A pail and a watch as they stand; kept as a draft, so that a dead battery loses nothing. Moments in ms, 0 for none. */
export type PailState = {
  readonly startedAt: number;
  readonly stoppedAt: number;
  /** The volume of the mark, '1 gal'; empty while another is keyed in. */
  readonly volume: string;
  readonly own: string;
  readonly ownUnit: string;
  readonly runs: readonly PailRun[];
};

export const freshPail = (volume: string, ownUnit: string): PailState => ({
  startedAt: 0,
  stoppedAt: 0,
  volume,
  own: '',
  ownUnit,
  runs: [],
});

export const isRunning = ({ startedAt, stoppedAt }: PailState): boolean => startedAt > 0 && stoppedAt === 0;
export const isStopped = ({ stoppedAt }: PailState): boolean => stoppedAt > 0;

/** One tap starts the watch; what was timed before is put by as a run. */
export const started = (pail: PailState, now: number): PailState => ({
  ...pail,
  runs: runsOf(pail),
  startedAt: now,
  stoppedAt: 0,
});

export const stopped = (pail: PailState, now: number): PailState =>
  isRunning(pail) ? { ...pail, stoppedAt: Math.max(now, pail.startedAt + 1) } : pail;

/** The watch back to zero; what it showed is left out. */
export const cleared = (pail: PailState): PailState => ({ ...pail, startedAt: 0, stoppedAt: 0 });

/** Runs put by, and the one on the watch once it has stopped. */
export const runsOf = (pail: PailState): readonly PailRun[] => {
  const { runs, startedAt, stoppedAt } = pail;
  return isStopped(pail) ? [...runs, { volume: caught(pail), milliseconds: stoppedAt - startedAt }] : runs;
};

export const withoutRun = (pail: PailState, place: number): PailState =>
  place < pail.runs.length ? { ...pail, runs: pail.runs.toSpliced(place, 1) } : cleared(pail);

export const caught = ({ volume, own, ownUnit }: PailState): string =>
  volume === '' ? `${own.replace(',', '.')} ${ownUnit}`.trim() : volume;
