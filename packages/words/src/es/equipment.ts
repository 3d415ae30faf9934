import type { equipmentEn } from '../en/equipment.ts';
import type { Translation } from '../translation.ts';
export const equipmentEs = {} as const satisfies Translation<typeof equipmentEn>;
