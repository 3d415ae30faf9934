import { createReadStream } from 'node:fs';
import { mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises';
import type { Readable } from 'node:stream';
import { syncFolder } from '../store/durable.ts';

/** Every call to the disk that keeping files needs, so that trials can let any of them fail. */
export interface Disk {
  /** With those above it; fine where it is there. */
  makeFolder(path: string): Promise<void>;
  /** A new file; fails where one is there. */
  create(path: string): Promise<DiskFile>;
  rename(from: string, to: string): Promise<void>;
  /** Fine where none is there. */
  remove(path: string): Promise<void>;
  /** Names made, moved or removed in the folder are on disk. */
  syncFolder(path: string): Promise<void>;
  /** Names in a folder; none where it is not there. */
  list(path: string): Promise<readonly string[]>;
  /** Bytes of a file; undefined where it is not there. */
  size(path: string): Promise<number | undefined>;
  read(path: string): Promise<Readable>;
}

export interface DiskFile {
  write(bytes: Uint8Array): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

export const realDisk: Disk = {
  makeFolder: async (path) => {
    await mkdir(path, { recursive: true, mode: 0o700 });
  },
  create: async (path) => {
    const handle = await open(path, 'wx', 0o600);
    return {
      write: (bytes) => handle.writeFile(bytes),
      sync: () => handle.sync(),
      close: () => handle.close(),
    };
  },
  rename,
  remove: (path) => rm(path, { force: true }),
  syncFolder: async (path) => syncFolder(path),
  list: (path) => readdir(path).catch(whereMissing<readonly string[]>([])),
  size: (path) => stat(path).then(({ size }) => size, whereMissing(undefined)),
  read: async (path) => createReadStream(path),
};

const whereMissing =
  <T>(instead: T) =>
  (error: unknown): T => {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return instead;
    throw error;
  };
