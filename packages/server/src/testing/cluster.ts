import { spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/*
 * A PostgreSQL of our own for trials: data and socket in a temporary folder, gone afterwards. Never the system's.
 */

/** 'owner' makes the tables; 'app' is what a server logs in as and owns nothing. */
export type Role = 'owner' | 'app';

export type Cluster = {
  /** Where a role logs in; another database by name. */
  readonly url: (role: Role, database?: string) => string;
  readonly createDatabase: (name: string) => void;
  /** The ids of the postmaster and its children now. */
  readonly processes: () => readonly number[];
  /** SIGKILL to all of them at once; resolves when they are gone. */
  readonly kill: () => Promise<void>;
  /** Stops it in good order, its data kept. */
  readonly halt: () => void;
  /** Again on the same data, after `kill` or `halt`. */
  readonly startAgain: () => void;
  /** Stops it and removes all of it. */
  readonly stop: () => void;
};

/** Where PostgreSQL's programs are; undefined where there are none. */
export const postgresPrograms = (): string | undefined => {
  const root = '/usr/lib/postgresql';
  if (!existsSync(root)) return undefined;
  return readdirSync(root)
    .toSorted((a, b) => Number(b) - Number(a))
    .map((version) => join(root, version, 'bin'))
    .find((folder) => existsSync(join(folder, 'initdb')));
};

/** What to type where they are missing. */
export const postgresMissing =
  'PostgreSQL is not here: sudo apt-get install --no-install-recommends postgresql';

/** @throws where the programs are missing or the cluster does not start */
export const startCluster = async ({ fsync }: { readonly fsync: boolean }): Promise<Cluster> => {
  const found = postgresPrograms();
  if (found === undefined) throw new Error(postgresMissing);
  const programs: string = found;
  const folder = mkdtempSync(join(tmpdir(), 'bw-pg-'));
  const data = join(folder, 'data');
  if (isRoot()) giveTo('postgres', folder);

  const start = (): void =>
    run(join(programs, 'pg_ctl'), [
      ...['-D', data, '-l', join(folder, 'log'), '-w', '-t', '60', '-o'],
      `-c listen_addresses= -c unix_socket_directories=${folder} -c fsync=${fsync ? 'on' : 'off'} -c max_connections=60`,
      'start',
    ]);
  const halt = (): void => run(join(programs, 'pg_ctl'), ['-D', data, '-w', '-m', 'fast', 'stop']);
  const ask = (sql: string): void =>
    run(join(programs, 'psql'), [
      ...['-h', folder, '-U', 'postgres', '-d', 'postgres', '-q', '-v', 'ON_ERROR_STOP=1'],
      ...['-c', sql],
    ]);
  const processes = (): readonly number[] => {
    const [first] = readIfThere(join(data, 'postmaster.pid')).split('\n');
    const postmaster = Number(first ?? '');
    return postmaster > 0 ? [postmaster, ...childrenOf(postmaster)] : [];
  };
  /**
   * Where the first process of a machine fetches its dead late or never, a killed postmaster keeps its id, and
   * PostgreSQL would take it for a living one. All of them are known to be dead here.
   */
  const forgetProcess = (): void => {
    rmSync(join(data, 'postmaster.pid'), { force: true });
    rmSync(join(folder, '.s.PGSQL.5432.lock'), { force: true });
  };
  const createDatabase = (name: string): void => ask(`create database "${name}" owner "owner"`);

  try {
    run(join(programs, 'initdb'), ['-D', data, '-U', 'postgres', '-A', 'trust', '--no-sync', ...plainText]);
    start();
    ask('create role "owner" login');
    ask('create role "app" login');
    createDatabase('brinewright');
  } catch (error) {
    await killAll(processes());
    rmSync(folder, { recursive: true, force: true });
    throw error;
  }

  return {
    url: (role, database = 'brinewright') =>
      `postgresql://${role}@/${database}?host=${encodeURIComponent(folder)}`,
    createDatabase,
    processes,
    kill: async () => {
      await killAll(processes());
      forgetProcess();
    },
    halt,
    startAgain: start,
    stop: () => {
      if (processes().some(isAlive)) halt();
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

const plainText = ['--encoding=UTF8', '--locale=C'];

const isRoot = (): boolean => process.getuid?.() === 0;

/** PostgreSQL refuses to run as root. */
const run = (program: string, args: readonly string[]): void => {
  const [command, all] = isRoot()
    ? ['runuser', ['-u', 'postgres', '--', program, ...args]]
    : [program, [...args]];
  const { status, stderr, error } = spawnSync(command, all, {
    cwd: tmpdir(),
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  if (status !== 0) throw new Error(`${program}: ${error?.message ?? stderr}`);
};

const giveTo = (user: string, folder: string): void => {
  const idOf = (flag: string): number =>
    Number(spawnSync('id', [flag, user], { encoding: 'utf8' }).stdout.trim());
  chownSync(folder, idOf('-u'), idOf('-g'));
};

const killAll = async (pids: readonly number[]): Promise<void> => {
  for (const pid of pids) {
    if (isAlive(pid)) process.kill(pid, 'SIGKILL');
  }
  while (pids.some(isAlive)) await wait(5);
};

/** One that has ended and was not yet fetched by its parent is not alive. */
const isAlive = (pid: number): boolean => /\) [^ZX] /u.test(readIfThere(`/proc/${pid}/stat`));

const childrenOf = (parent: number): readonly number[] =>
  readdirSync('/proc')
    .filter((name) => /^\d+$/u.test(name))
    .filter(
      (name) =>
        / (\d+)/u.exec(readIfThere(`/proc/${name}/stat`).replace(/^.*\) \S/su, ''))?.[1] === `${parent}`,
    )
    .map(Number);

const readIfThere = (path: string): string => {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
};
