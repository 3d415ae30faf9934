import type { issuesEn } from '../en/issues.ts';
import type { Translation } from '../translation.ts';
export const issuesEs = {} as const satisfies Translation<typeof issuesEn>;
