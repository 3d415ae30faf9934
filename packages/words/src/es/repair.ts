import type { repairEn } from '../en/repair.ts';
import type { Translation } from '../translation.ts';
export const repairEs = {} as const satisfies Translation<typeof repairEn>;
