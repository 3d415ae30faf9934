import type { appEn } from '../en/app.ts';
import type { Translation } from '../translation.ts';
import { appShellEs } from './app-shell.ts';

export const appEs = {
  ...appShellEs,
} as const satisfies Translation<typeof appEn>;
