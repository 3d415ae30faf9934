import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/*
 * A command of the program under strace, which counts its calls to the disk and can let the n-th of a kind fail, or
 * kill the program at it: the system itself then behaves as a broken disk or a power cut would.
 */

const program = join(import.meta.dirname, '../../../packages/cli/src/main.ts');

/** Calls that read, change or sync files of ours and that Node does not need to start. */
const kinds = [
  'pread64',
  'pwrite64',
  'fsync',
  'fdatasync',
  'ftruncate',
  'rename',
  'mkdir',
  'unlink',
  'chmod',
] as const;
export type CallKind = (typeof kinds)[number];

export type Injection = {
  readonly kind: CallKind;
  readonly n: number;
  readonly how: 'fails' | 'kills';
};

export type Ended = { readonly code: number | null; readonly messages: string };

export const canTrace = (): boolean => spawnSync('strace', ['-V'], { stdio: 'ignore' }).status === 0;

/** One thread beside the first and no cache of compiled code, so that calls come in the same order each time. */
const env = {
  ...process.env,
  DATABASE_URL: undefined,
  NODE_DISABLE_COMPILE_CACHE: '1',
  UV_THREADPOOL_SIZE: '1',
};

const traced = (options: readonly string[], args: readonly string[]): Ended => {
  const { status, stderr } = spawnSync(
    'strace',
    ['-f', '-qq', ...options, process.execPath, program, ...args],
    {
      env,
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  return { code: status, messages: stderr };
};

/** How often a command makes each kind of call, undisturbed. */
export const countCalls = (args: readonly string[], file: string): ReadonlyMap<CallKind, number> => {
  const { code, messages } = traced(['-o', file, '-e', `trace=${kinds.join(',')}`], args);
  if (code !== 0) throw new Error(`${args.join(' ')} ended with ${code}: ${messages}`);
  const counts = new Map<CallKind, number>();
  for (const line of readFileSync(file, 'utf8').split('\n')) {
    const kind = kinds.find((one) => line.includes(` ${one}(`));
    if (kind !== undefined) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
};

export const runWith = ({ kind, n, how }: Injection, args: readonly string[]): Ended => {
  const effect = how === 'fails' ? 'error=EIO' : 'signal=KILL';
  return traced(['-o', '/dev/null', '-e', `trace=${kind}`, '-e', `inject=${kind}:${effect}:when=${n}`], args);
};
