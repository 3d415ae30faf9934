import type { diagnosisEn } from '../en/diagnosis.ts';
import type { Translation } from '../translation.ts';
export const diagnosisEs = {} as const satisfies Translation<typeof diagnosisEn>;
