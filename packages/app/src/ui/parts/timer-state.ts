/** Moments in milliseconds since 1970; kept as a draft, so a dead battery loses nothing. */
export type TimerState = {
  readonly startedAt?: number | undefined;
  readonly stoppedAt?: number | undefined;
};

export const elapsed = ({ startedAt, stoppedAt }: TimerState, now: number): number =>
  startedAt === undefined ? 0 : Math.max(0, (stoppedAt ?? now) - startedAt);

/** Minutes and seconds, tenths apart. */
export const clockText = (milliseconds: number): { readonly whole: string; readonly part: string } => {
  const tenths = Math.floor(milliseconds / 100);
  const seconds = Math.floor(tenths / 10);
  const shown = String(seconds % 60).padStart(2, '0');
  return { whole: `${Math.floor(seconds / 60)}:${shown}`, part: `.${tenths % 10}` };
};
