import { useSyncExternalStore } from 'react';

const wide = '(min-width: 62.5rem)';

const listen = (changed: () => void): (() => void) => {
  const query = matchMedia(wide);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
};

/** Whether the wide sheet is in use: from 1000 px at the usual text size. */
export const useWide = (): boolean => useSyncExternalStore(listen, () => matchMedia(wide).matches);
