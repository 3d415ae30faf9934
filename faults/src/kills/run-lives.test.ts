import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Ground } from './ground.ts';
import { runLives } from './run-lives.ts';
import { ServerProcess } from './server-process.ts';

const program = join(import.meta.dirname, '../testing/tiny-server.ts');

/** The trials on a server that is known to be good, and on one that is known not to be. */
describe('a run of kills', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'brinewright-lives-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const tinyGround = (manner: 'honest' | 'hasty'): Ground => ({
    store: 'sqlite',
    spawn: () => ServerProcess.spawn([process.execPath, program, join(folder, 'log'), manner]),
    companyAt: async () => '0193a8f0-0000-7000-8000-000000000001',
    close: async () => undefined,
  });

  it('finds nothing wrong with a server that writes before it answers', async () => {
    const { kills, acknowledged, violations, oddities, notReopened, reopened } = await runLives(
      tinyGround('honest'),
      4,
      11,
    );
    expect({ violations, oddities, notReopened }).toEqual({
      violations: [],
      oddities: [],
      notReopened: undefined,
    });
    expect(kills).toBeGreaterThanOrEqual(4);
    expect(acknowledged).toBeGreaterThan(20);
    expect(reopened.length).toBeGreaterThan(0);
  });

  it('finds the loss where a server answers before it writes, and keeps the history', async () => {
    const { violations, historyFile = '' } = await runLives(tinyGround('hasty'), 4, 11);
    expect(violations.filter(({ rule }) => rule === 'lost').length).toBeGreaterThan(0);
    expect(readFileSync(historyFile, 'utf8')).toContain('"kind":"killed"');
    rmSync(dirname(historyFile), { recursive: true });
  });

  it('tells when the server does not open again', async () => {
    const { notReopened, historyFile = '' } = await runLives(
      {
        ...tinyGround('honest'),
        spawn: () => ServerProcess.spawn([process.execPath, '-e', 'process.exit(3)']),
      },
      1,
      11,
    );
    expect(notReopened).toContain('the server did not open');
    rmSync(dirname(historyFile), { recursive: true });
  });
});
