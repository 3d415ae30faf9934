import { useCallback } from 'react';
import { useDevice } from './device-context.ts';
import type { KeptPhoto } from './keep-photo.ts';

/** Keeps a photo on the device; the entry that shows it is written by whoever took it. */
export const useKeepPhoto = (): ((photo: Blob) => Promise<KeptPhoto>) => {
  const { database, sync } = useDevice();
  return useCallback(
    async (photo) => {
      const { keepPhoto } = await import('./keep-photo.ts');
      const kept = await keepPhoto(database, photo, new Date().toISOString());
      sync.nudge();
      return kept;
    },
    [database, sync],
  );
};
