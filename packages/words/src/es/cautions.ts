import type { cautionsEn } from '../en/cautions.ts';
import type { Translation } from '../translation.ts';
export const cautionsEs = {} as const satisfies Translation<typeof cautionsEn>;
