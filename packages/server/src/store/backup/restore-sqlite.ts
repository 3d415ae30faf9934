import { renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { syncFolder } from '../durable.ts';
import { realPath } from '../open-sqlite.ts';
import { lockFile } from '../sqlite-lock.ts';
import { asFault } from '../store-fault.ts';
import { finishRestore, readyName } from './finish-restore.ts';
import { type Place, stampOf } from './place.ts';
import { type Fresh, unpack } from './unpack.ts';

export type SqliteRestore = Fresh & {
  readonly from: string;
  readonly place: Extract<Place, { readonly kind: 'sqlite' }>;
  readonly company: string;
};

/** Works whatever lies there: a record, a wreck, or nothing. */
export const restoreSqlite = async ({
  from,
  place,
  company,
  ...fresh
}: SqliteRestore): Promise<string | undefined> => {
  const path = realPath(place.path);
  const release = lockFile(path);
  const made = `${path}.restoring`;
  try {
    finishRestore(path);
    await unpack(from, made, place.files, company, fresh);
    renameSync(made, readyName(path, stampOf(fresh.now)));
    syncFolder(dirname(path));
    return finishRestore(path);
  } catch (error) {
    rmSync(made, { force: true });
    throw asFault(error, path);
  } finally {
    release();
  }
};
