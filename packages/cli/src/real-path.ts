import { realpathSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** Where a path leads once its links are followed; what does not exist yet stands in a folder that may. */
export const realPath = (path: string): string => {
  try {
    return realpathSync.native(path);
  } catch {
    const folder = dirname(path);
    return folder === path ? path : join(realPath(folder), basename(path));
  }
};
