import type { ReaderChoice } from '../engine/speech.ts';
import { useDevice } from './device-context.ts';
import type { Preferences } from './settings.ts';
import { useSettings } from './use-settings.ts';

export const usePreferences = (): Preferences => useSettings(useDevice().settings);

/** Language and units the views are asked in. */
export const useReader = (): ReaderChoice => usePreferences();
