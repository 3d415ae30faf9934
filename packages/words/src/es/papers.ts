import type { papersEn } from '../en/papers.ts';
import type { Translation } from '../translation.ts';
export const papersEs = {} as const satisfies Translation<typeof papersEn>;
