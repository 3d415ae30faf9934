import type { situationEn } from '../en/situation.ts';
import type { Translation } from '../translation.ts';
export const situationEs = {} as const satisfies Translation<typeof situationEn>;
