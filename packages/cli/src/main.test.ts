import { spawn } from 'node:child_process';
import { once } from 'node:events';
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
