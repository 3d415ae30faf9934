import type { Disk, DiskFile } from '../files/disk.ts';
import { MeantToFail, type NthFailure } from './nth-failure.ts';

/** A disk whose n-th call fails without doing anything. */
export const failingDisk = (disk: Disk, nth: NthFailure): Disk => {
  const tried = async <T>(call: () => Promise<T>): Promise<T> => {
    if (nth.isNow()) throw new MeantToFail('disk');
    return call();
  };
  return {
    makeFolder: (path) => tried(() => disk.makeFolder(path)),
    create: (path) => tried(async () => failingFile(await disk.create(path), tried)),
    rename: (from, to) => tried(() => disk.rename(from, to)),
    remove: (path) => tried(() => disk.remove(path)),
    syncFolder: (path) => tried(() => disk.syncFolder(path)),
    list: (path) => tried(() => disk.list(path)),
    size: (path) => tried(() => disk.size(path)),
    read: (path) => tried(() => disk.read(path)),
  };
};

const failingFile = (file: DiskFile, tried: <T>(call: () => Promise<T>) => Promise<T>): DiskFile => ({
  write: (bytes) => tried(() => file.write(bytes)),
  sync: () => tried(() => file.sync()),
  /** The handle is given back even then. */
  close: async () => {
    await file.close();
    await tried(async () => undefined);
  },
});
