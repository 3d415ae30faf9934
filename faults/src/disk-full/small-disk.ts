import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type SmallDisk = { readonly folder: string; readonly close: () => void };

/** A file system of its own with that much room, in memory; undefined where we may not make one. */
export const smallDisk = (megabytes: number): SmallDisk | undefined => {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-small-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder]);
  const remove = (): void => rmSync(folder, { recursive: true, force: true });
  if (mounted.status !== 0) {
    remove();
    return undefined;
  }
  return {
    folder,
    close: () => {
      spawnSync('umount', [folder]);
      remove();
    },
  };
};
