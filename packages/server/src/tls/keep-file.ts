import { randomUUID } from 'node:crypto';
import { mkdir, open, rename, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Writes a file of ours so that it is there whole, on disk and for nobody else, or not at all. */
export const keepFile = async (path: string, text: string): Promise<void> => {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const made = `${path}.${randomUUID()}.part`;
  try {
    const file = await open(made, 'wx', 0o600);
    try {
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(made, path);
    await syncFolder(folder);
  } catch (error) {
    await rm(made, { force: true });
    throw error;
  }
};

const syncFolder = async (folder: string): Promise<void> => {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
};
