/** Hours and minutes on the clock of this device: '8:52'. */
export const clockTime = (instant: string): string => {
  const at = new Date(instant);
  return Number.isNaN(at.getTime()) ? '' : `${at.getHours()}:${String(at.getMinutes()).padStart(2, '0')}`;
};
