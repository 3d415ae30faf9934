import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { closeSync, existsSync, openSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const main = join(import.meta.dirname, 'main.ts');

/** The program in a process of its own, whose reader closes the pipe before a word has come. */
const readNothingOf = async (argv: readonly string[]): Promise<{ code: unknown; err: string }> => {
  const child = spawn(process.execPath, [main, ...argv], { stdio: ['ignore', 'pipe', 'pipe'] });
  child.stdout.destroy();
  let err = '';
  child.stderr.on('data', (more: Buffer) => {
    err += more.toString();
  });
  const [code] = await once(child, 'close');
  return { code, err };
};

describe('a reader that closes the pipe', () => {
  it.each(['lab list', '--help', 'equipment schema'])('ends “%s” quietly', async (command) => {
    expect(await readNothingOf(command.split(' '))).toEqual({ code: 0, err: '' });
  });
});

/** The program writing onto a disk that is always full. */
const writingNowhere = (argv: readonly string[]): { code: unknown; err: string } => {
  const full = openSync('/dev/full', 'w');
  const { status, stderr } = spawnSync(process.execPath, [main, ...argv], {
    stdio: ['ignore', full, 'pipe'],
    encoding: 'utf8',
  });
  closeSync(full);
  return { code: status, err: stderr };
};

describe.skipIf(!existsSync('/dev/full'))('an output that finds no room', () => {
  it.each([
    ['lab list', 'The output was not written to its end (ENOSPC).'],
    ['lab list --lang es', 'La salida no se escribió hasta el final (ENOSPC).'],
  ])('ends “%s” with one sentence, in its language, and no stack', (command, told) => {
    const { code, err } = writingNowhere(command.split(' '));
    expect(code).toBe(1);
    expect(err).toContain(told);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
