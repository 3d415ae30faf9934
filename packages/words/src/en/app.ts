import { appShellEn } from './app-shell.ts';

export const appEn = {
  ...appShellEn,
} as const;
