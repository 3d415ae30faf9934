import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './counts.ts';

/*
 * `npm start` as somebody types it, in a home of its own, ended as a terminal ends it: the signal goes to npm, to the
 * shell and to the program at once.
 */

export type Trial = { readonly title: string; readonly ok: boolean; readonly output: string };

const readyWithin = 20_000;
const goneWithin = 5_000;

/** A home in which nothing lies yet. */
const newHome = () => {
  const home = mkdtempSync(join(tmpdir(), 'brinewright-start-'));
  const temporary = join(home, 'tmp');
  const data = join(home, 'data');
  for (const folder of [temporary, data]) mkdirSync(folder);
  return { home, temporary, data };
};

type Home = ReturnType<typeof newHome>;

type Started = {
  readonly child: ChildProcess;
  readonly said: () => string;
  readonly lines: () => readonly string[];
  /** The address it printed; undefined where it printed none in time. */
  readonly address: string | undefined;
};

const start = async ({ home, temporary, data }: Home): Promise<Started> => {
  const child = spawn('npm', ['start'], {
    cwd: root,
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { PATH: process.env.PATH, HOME: home, TMPDIR: temporary, XDG_DATA_HOME: data, TZ: 'UTC' },
  });
  let out = '';
  let err = '';
  child.stderr.on('data', (more: Buffer) => {
    err += more.toString();
  });
  const address = await new Promise<string | undefined>((found) => {
    setTimeout(() => found(undefined), readyWithin).unref();
    child.on('exit', () => found(undefined));
    child.stdout.on('data', (more: Buffer) => {
      out += more.toString();
      const [, url] = /^Ready: (\S+)$/mu.exec(out) ?? [];
      if (url !== undefined) found(url);
    });
  });
  return { child, said: () => out + err, lines: () => ownLines(out), address };
};

/** Without npm's own two lines, which begin with `> `. */
const ownLines = (out: string): readonly string[] =>
  out.split('\n').filter((line) => line !== '' && !line.startsWith('> '));

/** npm passes the signal on and ends by it itself; a shell that had to end the server by force would not. */
type Ended = { readonly code: unknown; readonly milliseconds: number };

const interrupt = async ({ child }: Started): Promise<Ended> => {
  const began = Date.now();
  if (child.exitCode !== null || child.pid === undefined) return { code: child.exitCode, milliseconds: 0 };
  const exited = once(child, 'exit');
  const group = -child.pid;
  process.kill(group, 'SIGINT');
  const tooLong = setTimeout(() => process.kill(group, 'SIGKILL'), goneWithin);
  const [code, signal] = await exited;
  clearTimeout(tooLong);
  return { code: signal ?? code, milliseconds: Date.now() - began };
};

const statusOf = async (address: string | undefined): Promise<number | undefined> => {
  if (address === undefined) return undefined;
  const answer = await fetch(`${address}/`);
  await answer.text();
  return answer.status;
};

/** The record, with no entry yet, in which a workshop can be begun. */
const emptyRecord = ['brinewright', 'brinewright/workshop.sqlite', 'brinewright/workshop.sqlite.lock'];

/** Node keeps compiled code among the temporary files; that is no leftover of ours. */
const leftIn = ({ temporary, data }: Home): readonly string[] => [
  ...readdirSync(temporary).filter((name) => name !== 'node-compile-cache'),
  ...readdirSync(data, { recursive: true, encoding: 'utf8' }).filter((name) => !emptyRecord.includes(name)),
];

export const startTrials = async (): Promise<readonly Trial[]> => {
  const [first, second] = [newHome(), newHome()];
  const one = await start(first);
  const status = await statusOf(one.address);
  const two = await start(second);
  const endings = [await interrupt(two), await interrupt(one)];
  const left = [...leftIn(first), ...leftIn(second)];
  for (const { home } of [first, second]) rmSync(home, { recursive: true, force: true });
  const trial = (title: string, ok: boolean, seen: unknown): Trial => ({
    title,
    ok,
    output: `${JSON.stringify(seen)}\n${one.said()}${two.said()}`,
  });
  return [
    trial(
      'npm start prints exactly one line, the address, within 20 s',
      one.lines().length === 1 && /^http:\/\/127\.0\.0\.1:\d+$/u.test(one.address ?? ''),
      one.lines(),
    ),
    trial('the start page answers', status === 200, status),
    trial(
      'a port that is taken is told, and another one used',
      two.address !== undefined && two.address !== one.address && tells(two, portOf(two.address)),
      [one.address, two.address],
    ),
    trial(
      'Ctrl-C ends it within 5 s',
      endings.every(
        ({ code, milliseconds }) => (code === 0 || code === 'SIGINT') && milliseconds < goneWithin,
      ),
      endings,
    ),
    trial('nothing is left behind', left.length === 0, left),
  ];
};

/** In a sentence of its own, beside the address. */
const tells = ({ said }: Started, port: string): boolean =>
  said()
    .split('\n')
    .some((line) => !line.startsWith('Ready') && line.includes(port));

const portOf = (address = ''): string => new URL(address === '' ? 'http://none:1' : address).port;
