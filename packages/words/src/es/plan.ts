import type { planEn } from '../en/plan.ts';
import type { Translation } from '../translation.ts';
export const planEs = {} as const satisfies Translation<typeof planEn>;
