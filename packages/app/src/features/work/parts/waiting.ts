/** When a wait ends, on the clock of this device. */
export const readyAt = (
  startedAt: number,
  minutes: number,
  now: number,
): { readonly clock: string; readonly minutesLeft: number; readonly isReady: boolean } => {
  const end = startedAt + minutes * 60_000;
  const at = new Date(end);
  return {
    clock: `${at.getHours()}:${String(at.getMinutes()).padStart(2, '0')}`,
    minutesLeft: Math.max(0, Math.ceil((end - now) / 60_000)),
    isReady: now >= end,
  };
};
