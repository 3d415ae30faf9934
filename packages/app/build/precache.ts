import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const mark = '__PRECACHE__';
const source = 'src/offline/service-worker/service-worker.ts';

type Emitted = { readonly fileName: string; readonly content: string | Uint8Array };

/** Builds the service worker and gives it the list of all files, with a name for the cache made from what is in them. */
export const precache = (): Plugin => {
  let publicDir = '';
  return {
    name: 'precache',
    apply: 'build',
    enforce: 'post',
    configResolved: (config) => {
      publicDir = config.publicDir;
    },
    buildStart() {
      this.emitFile({ type: 'chunk', id: source, fileName: 'sw.js' });
    },
    generateBundle(_, bundle) {
      const worker = bundle['sw.js'];
      if (worker?.type !== 'chunk') throw new Error('the service worker was not built');
      const emitted = Object.values(bundle).flatMap((file): Emitted[] =>
        file.fileName === 'sw.js' || file.fileName.startsWith('.vite/')
          ? []
          : [{ fileName: file.fileName, content: file.type === 'chunk' ? file.code : file.source }],
      );
      const all = [...emitted, ...publicFiles(publicDir)].sort((a, b) => (a.fileName < b.fileName ? -1 : 1));
      const list = { version: versionOf(all), files: all.map(({ fileName }) => fileName) };
      worker.code = worker.code.replace(mark, JSON.stringify(JSON.stringify(list)).slice(1, -1));
    },
  };
};

const publicFiles = (folder: string): Emitted[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => ({ fileName: path.slice(folder.length + 1), content: readFileSync(path) }));

const versionOf = (files: readonly Emitted[]): string => {
  const hash = createHash('sha256');
  for (const { fileName, content } of files) hash.update(fileName).update('\0').update(content);
  return hash.digest('hex').slice(0, 16);
};
