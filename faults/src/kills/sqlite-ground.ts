import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Ground } from './ground.ts';
import { companyAt } from './http-way.ts';
import { ServerProcess, serving } from './server-process.ts';

/** A data file of its own, on the disk that holds temporary files. */
export const sqliteGround = async (): Promise<Ground> => {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-kills-'));
  return {
    store: 'sqlite',
    spawn: () => ServerProcess.spawn(serving(join(folder, 'workshop.sqlite'))),
    companyAt,
    close: async () => rmSync(folder, { recursive: true, force: true }),
  };
};
