import { readdir, readFile } from 'node:fs/promises';
import { type BrowserContext, chromium, type Page } from 'playwright-core';

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';

export type Viewport = { readonly width: number; readonly height: number };
export const phone: Viewport = { width: 390, height: 844 };
export const desk: Viewport = { width: 1440, height: 900 };

/** A test, or a file of them: the browser ends with it. */
export type Trial = { readonly after: (end: () => Promise<void>) => void };

export type Profile = {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What the page complained about so far. */
  readonly complaints: readonly string[];
  /** Ends the browser as a dead battery does: nothing is closed first. */
  readonly kill: () => Promise<void>;
};

/** A browser with a profile of its own, which outlives it. */
export const openProfile = async (
  trial: Trial,
  folder: string,
  viewport: Viewport = phone,
): Promise<Profile> => {
  const context = await chromium.launchPersistentContext(folder, {
    executablePath,
    args: ['--no-sandbox'],
    viewport,
    locale: 'en-US',
  });
  trial.after(() => context.close().catch(() => undefined));
  const page = context.pages()[0] ?? (await context.newPage());
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' && !message.text().includes('net::ERR')) complaints.push(message.text());
  });
  return { context, page, complaints, kill: () => killOf(folder) };
};

/** All processes of the browser that was started with this profile, and no other. */
const killOf = async (folder: string): Promise<void> => {
  const pids = (await readdir('/proc')).filter((name) => /^\d+$/u.test(name)).map(Number);
  for (const pid of pids) if ((await commandOf(pid)).includes(`--user-data-dir=${folder}`)) killIfThere(pid);
};

const commandOf = async (pid: number): Promise<string> => {
  try {
    return await readFile(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
};

const killIfThere = (pid: number): void => {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It has gone with its parent.
  }
};
