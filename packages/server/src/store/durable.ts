import { closeSync, fsyncSync, openSync } from 'node:fs';

/** What was written to the file is on disk. */
export const syncFile = (path: string): void => sync(path, 'r+');

/** A name that was made, moved or removed in the folder is on disk; Windows does so by itself and allows no asking. */
export const syncFolder = (path: string): void => {
  if (process.platform !== 'win32') sync(path, 'r');
};

const sync = (path: string, flags: string): void => {
  const handle = openSync(path, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
};
