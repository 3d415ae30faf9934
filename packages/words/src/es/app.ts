import type { appEn } from '../en/app.ts';
import type { Translation } from '../translation.ts';
import { appCutawayEs } from './app-cutaway.ts';
import { appDefinitionsEs } from './app-definitions.ts';
import { appFindEs } from './app-find.ts';
import { appFirstMinuteEs } from './app-first-minute.ts';
import { appHandOverEs } from './app-hand-over.ts';
import { appLeaveSafeEs } from './app-leave-safe.ts';
import { appPreferencesEs } from './app-preferences.ts';
import { appProgramEs } from './app-program.ts';
import { appProveEs } from './app-prove.ts';
import { appReadingsEs } from './app-readings.ts';
import { appRecogniseEs } from './app-recognise.ts';
import { appRepairEs } from './app-repair.ts';
import { appShellEs } from './app-shell.ts';
import { appStartEs } from './app-start.ts';
import { appUnitEs } from './app-unit.ts';
import { appWhatIfEs } from './app-what-if.ts';
import { appWorkEs } from './app-work.ts';

export const appEs = {
  ...appHandOverEs,
  ...appUnitEs,
  ...appDefinitionsEs,
  ...appWhatIfEs,
  ...appShellEs,
  ...appPreferencesEs,
  ...appFirstMinuteEs,
  ...appStartEs,
  ...appRecogniseEs,
  ...appReadingsEs,
  ...appProveEs,
  ...appFindEs,
  ...appProgramEs,
  ...appCutawayEs,
  ...appWorkEs,
  ...appRepairEs,
  ...appLeaveSafeEs,
} as const satisfies Translation<typeof appEn>;
