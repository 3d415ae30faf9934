import type { recognitionEn } from '../en/recognition.ts';
import type { Translation } from '../translation.ts';
export const recognitionEs = {} as const satisfies Translation<typeof recognitionEn>;
