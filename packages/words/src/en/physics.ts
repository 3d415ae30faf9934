import { physicsBedEn } from './physics-bed.ts';
import { physicsSettingsEn } from './physics-settings.ts';
import { physicsWaterEn } from './physics-water.ts';

export const physicsEn = {
  ...physicsSettingsEn,
  ...physicsWaterEn,
  ...physicsBedEn,
} as const satisfies Record<string, string>;
