import { useEffect } from 'react';

/** Keeps the screen lit while a watch runs, where the device lets it; the watch itself needs no screen. */
export const useAwake = (isNeeded: boolean): void => {
  useEffect(() => {
    if (!isNeeded || !('wakeLock' in navigator)) return undefined;
    const asked = navigator.wakeLock.request('screen').catch(() => undefined);
    return () => void asked.then((lock) => lock?.release());
  }, [isNeeded]);
};
