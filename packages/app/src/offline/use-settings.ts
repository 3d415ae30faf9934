import { useCallback, useSyncExternalStore } from 'react';
import type { Preferences, Settings } from './settings.ts';

export const useSettings = (settings: Settings): Preferences =>
  useSyncExternalStore(
    useCallback((changed) => settings.listen(changed), [settings]),
    () => settings.preferences,
  );
