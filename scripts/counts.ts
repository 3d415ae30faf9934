import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/* Running things for `npm test`, and counting how they ended. */

export const root = join(import.meta.dirname, '..');
export const bin = (name: string): string => join(root, 'node_modules', '.bin', name);

const counts = { passed: 0, failed: 0, skipped: 0 };

export const count = (more: Partial<typeof counts>): void => {
  counts.passed += more.passed ?? 0;
  counts.failed += more.failed ?? 0;
  counts.skipped += more.skipped ?? 0;
};

export const finish = (): never => {
  console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
  process.exit(counts.failed === 0 ? 0 : 1);
};

/** Tells how one thing ended; the first that failed ends the whole. */
export const check = (title: string, ok: boolean, output = ''): void => {
  console.log(`${ok ? 'ok' : 'FAILED'}  ${title}`);
  count(ok ? { passed: 1 } : { failed: 1 });
  if (ok) return;
  console.log(output);
  finish();
};

/** What cannot be tried here; where everything has to be tried, that is a failure. */
export const skip = (title: string, mend: string): void => {
  if (process.env.CI === 'true') check(title, false, mend);
  console.log(`skipped  ${title}: ${mend}`);
  count({ skipped: 1 });
};

type Ran = { readonly ok: boolean; readonly output: string };

/** Quiet: what it says is kept, to be shown when it failed. */
export const run = (command: string, args: readonly string[], how: 'quiet' | 'shown' = 'shown'): Ran => {
  const result = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    stdio: how === 'quiet' ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, TZ: 'UTC' },
    maxBuffer: 64 * 1024 * 1024,
  });
  return { ok: result.status === 0, output: `${result.stdout ?? ''}${result.stderr ?? ''}` };
};

export const command = (title: string, name: string, args: readonly string[]): void => {
  const { ok, output } = run(name, args, 'quiet');
  check(title, ok, output);
};
