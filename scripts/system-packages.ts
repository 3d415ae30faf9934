import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/*
 * What the tests need beside npm's packages: a browser, PostgreSQL's programs, a tracer of system calls. What is
 * missing is installed by apt where that is allowed, and otherwise said with the command to type.
 */

export type SystemPackage = { readonly name: string; readonly isHere: () => boolean };

const onPath = (program: string): boolean =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => isProgram(join(folder, program)));

const isProgram = (path: string): boolean => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const postgres = '/usr/lib/postgresql';

export const systemPackages: readonly SystemPackage[] = [
  { name: 'chromium', isHere: () => onPath('chromium') },
  {
    name: 'postgresql',
    isHere: () =>
      existsSync(postgres) &&
      readdirSync(postgres).some((it) => isProgram(join(postgres, it, 'bin', 'initdb'))),
  },
  { name: 'strace', isHere: () => onPath('strace') },
];

/** The hand that installs, so that a test can watch it. */
export type Hand = {
  readonly isRoot: boolean;
  readonly has: (program: string) => boolean;
  readonly run: (command: string, args: readonly string[]) => boolean;
  readonly say: (text: string) => void;
};

/** Installs what is missing if it may; gives the names of what is missing still. */
export const ensureSystemPackages = (
  hand: Hand = ours,
  wanted: readonly SystemPackage[] = systemPackages,
): readonly string[] => {
  const missing = wanted.filter(({ isHere }) => !isHere()).map(({ name }) => name);
  const before = missing.length === 0 ? undefined : rightToInstall(hand);
  if (before === undefined) return missing;
  const [first, ...rest] = [...before, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get'];
  hand.say(`installing ${missing.join(', ')} by apt${before.length > 0 ? ' with sudo' : ''}`);
  const apt = (...args: readonly string[]): boolean =>
    first !== undefined && hand.run(first, [...rest, ...args]);
  if (apt('update', '-qq')) apt('install', '-y', '-qq', '--no-install-recommends', ...missing);
  return wanted.filter(({ isHere }) => !isHere()).map(({ name }) => name);
};

/** What to type for it. */
export const installCommand = (names: readonly string[]): string =>
  `sudo apt-get install --no-install-recommends ${names.join(' ')}`;

/** The words before apt-get; undefined where we may not install. */
const rightToInstall = ({ isRoot, has, run }: Hand): readonly string[] | undefined => {
  if (!has('apt-get')) return undefined;
  if (isRoot) return [];
  return has('sudo') && run('sudo', ['-n', 'true']) ? ['sudo', '-n'] : undefined;
};

const ours: Hand = {
  isRoot: process.getuid?.() === 0,
  has: onPath,
  run: (command, args) => spawnSync(command, args, { stdio: ['ignore', 'ignore', 'inherit'] }).status === 0,
  say: console.log,
};
