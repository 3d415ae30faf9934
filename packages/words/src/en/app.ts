import { appCutawayEn } from './app-cutaway.ts';
import { appDefinitionsEn } from './app-definitions.ts';
import { appFindEn } from './app-find.ts';
import { appFirstMinuteEn } from './app-first-minute.ts';
import { appHandOverEn } from './app-hand-over.ts';
import { appLeaveSafeEn } from './app-leave-safe.ts';
import { appPreferencesEn } from './app-preferences.ts';
import { appProgramEn } from './app-program.ts';
import { appProveEn } from './app-prove.ts';
import { appReadingsEn } from './app-readings.ts';
import { appRecogniseEn } from './app-recognise.ts';
import { appRepairEn } from './app-repair.ts';
import { appShellEn } from './app-shell.ts';
import { appStartEn } from './app-start.ts';
import { appUnitEn } from './app-unit.ts';
import { appWhatIfEn } from './app-what-if.ts';
import { appWorkEn } from './app-work.ts';

export const appEn = {
  ...appHandOverEn,
  ...appUnitEn,
  ...appDefinitionsEn,
  ...appWhatIfEn,
  ...appShellEn,
  ...appPreferencesEn,
  ...appFirstMinuteEn,
  ...appStartEn,
  ...appRecogniseEn,
  ...appReadingsEn,
  ...appProveEn,
  ...appFindEn,
  ...appProgramEn,
  ...appCutawayEn,
  ...appWorkEn,
  ...appRepairEn,
  ...appLeaveSafeEn,
} as const;
