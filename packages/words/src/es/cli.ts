import type { cliEn } from '../en/cli.ts';
import type { Translation } from '../translation.ts';
export const cliEs = {} as const satisfies Translation<typeof cliEn>;
