import { readFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { realPath } from '../real-path.ts';
import { run } from '../run.ts';

export type Ran = {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly written: ReadonlyMap<string, string>;
};

export const repository = resolve(import.meta.dirname, '../../../..');

/** The program in this process, from the root of the repository; `files` stand in for files on disk. */
export const runInProcess = async (
  argv: readonly string[],
  files: ReadonlyMap<string, string> = new Map(),
  env: Readonly<Record<string, string>> = {},
): Promise<Ran> => {
  const out: string[] = [];
  const err: string[] = [];
  const written = new Map<string, string>();
  const code = await run(argv, {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    cwd: repository,
    env,
    readText: (path) => files.get(basename(path)) ?? readFileSync(path, 'utf8'),
    readBase64: (path) => readFileSync(path, 'base64'),
    realPath,
    writeText: (path, text) => void written.set(path, text),
    now: () => '2026-11-25T15:00:00.000Z',
    stopAsked: () => Promise.resolve(),
  });
  return { code, out: out.join(''), err: err.join(''), written };
};
