import type { physicsEn } from '../en/physics.ts';
import type { Translation } from '../translation.ts';
import { physicsBedEs } from './physics-bed.ts';
import { physicsSettingsEs } from './physics-settings.ts';
import { physicsWaterEs } from './physics-water.ts';

export const physicsEs = {
  ...physicsSettingsEs,
  ...physicsWaterEs,
  ...physicsBedEs,
} as const satisfies Translation<typeof physicsEn>;
