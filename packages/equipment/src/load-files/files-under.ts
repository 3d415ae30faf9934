import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Issue } from '@brinewright/words';
import type { Finding } from '../issue/codes.ts';
import { issueAt } from '../issue/report.ts';

/** A file of definitions; `real` is the same however the path was written. */
export type DefinitionFile = { readonly file: string; readonly real: string; readonly text: string };

export type FilesFound = { readonly files: readonly DefinitionFile[]; readonly issues: readonly Issue[] };

const isDefinition = (name: string): boolean => /\.ya?ml$/iu.test(name);

/** Definition files at a path, a file or a folder with all below it, in order of name. */
export const filesUnder = (path: string, shownFrom?: string): FilesFound => {
  const shown = (file: string): string => (shownFrom === undefined ? file : shownIn(shownFrom, file));
  const refused = (code: 'file.missing' | 'file.unreadable' | 'file.none'): FilesFound => {
    const finding: Finding = { code, values: { file: path } };
    return { files: [], issues: [issueAt('error', [], { file: path, line: 1, column: 1 }, finding)] };
  };
  const kind = kindOf(path);
  if (kind === undefined) return refused('file.missing');
  try {
    const names = kind === 'file' ? [path] : namesBelow(path);
    if (names.length === 0) return refused('file.none');
    return { files: names.map((name) => fileAt(name, shown(name))), issues: [] };
  } catch {
    return refused('file.unreadable');
  }
};

/** Short where the file lies below the folder, whole elsewhere. */
const shownIn = (folder: string, file: string): string => {
  const short = relative(folder, file);
  return short.startsWith('..') ? file : short.split(sep).join('/');
};

const kindOf = (path: string): 'file' | 'folder' | undefined => {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return undefined;
  return found.isDirectory() ? 'folder' : 'file';
};

const namesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(isDefinition)
    .toSorted()
    .map((name) => join(folder, name));

const fileAt = (path: string, file: string): DefinitionFile => ({
  file,
  real: realpathSync(path),
  text: readFileSync(path, 'utf8'),
});
