import type { programEn } from '../en/program.ts';
import type { Translation } from '../translation.ts';
export const programEs = {} as const satisfies Translation<typeof programEn>;
