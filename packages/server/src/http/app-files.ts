import { readdir, readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';

export type AppFile = { readonly type: string; readonly bytes: Buffer; readonly zipped: Buffer };

/** The built app, all of it in memory, by the name it has below its folder: what is not in it cannot be asked for. */
export type AppFiles = ReadonlyMap<string, AppFile>;

const built = fileURLToPath(new URL('../../../app/dist/', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

/** Nothing where the app has not been built: the pages serve alone then. */
export const readAppFiles = async (folder = built): Promise<AppFiles | undefined> => {
  const names = await namesIn(folder);
  if (!names.includes('index.html')) return undefined;
  return new Map(await Promise.all(names.map(async (name) => [name, await fileAt(folder, name)] as const)));
};

const namesIn = async (folder: string): Promise<readonly string[]> => {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'));
  } catch {
    return [];
  }
};

const zip = promisify(gzip);

const fileAt = async (folder: string, name: string): Promise<AppFile> => {
  const bytes = await readFile(join(folder, name));
  return { type: types[extname(name)] ?? 'application/octet-stream', bytes, zipped: await zip(bytes) };
};
