import { existsSync, readdirSync, renameSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { syncFolder } from '../durable.ts';

/*
 * The exchange of one file for another, in steps that can be taken up again after a crash: as soon as the new record
 * stands whole under the name `….restored-<time>`, it is the record; opening the file finishes what was begun.
 */

export const readyName = (path: string, stamp: string): string => `${path}.restored-${stamp}`;
const asideName = (path: string, stamp: string): string => `${path}.before-restore-${stamp}`;

/** Moves what is there aside and the restored record in; gives where that is kept. Does nothing where none is ready. */
export const finishRestore = (path: string): string | undefined => {
  const folder = dirname(path);
  const start = basename(readyName(path, ''));
  const ready = readdirSync(folder)
    .filter((name) => name.startsWith(start) && /^\d{8}T\d{6}Z$/u.test(name.slice(start.length)))
    .toSorted()
    .at(-1);
  if (ready === undefined) return undefined;
  const aside = asideName(path, ready.slice(start.length));
  for (const end of ['-wal', '-shm', ''])
    if (existsSync(`${path}${end}`)) renameSync(`${path}${end}`, `${aside}${end}`);
  syncFolder(folder);
  renameSync(join(folder, ready), path);
  syncFolder(folder);
  return existsSync(aside) ? aside : undefined;
};
