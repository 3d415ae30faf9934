import type { unitsEn } from '../en/units.ts';
import type { Translation } from '../translation.ts';
export const unitsEs = {} as const satisfies Translation<typeof unitsEn>;
