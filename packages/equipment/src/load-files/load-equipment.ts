import { fileURLToPath } from 'node:url';
import type { Issue, Result } from '@brinewright/words';
import { type Compiled, compileDefinitions } from '../compile/compile-definitions.ts';
import { hasErrors } from '../issue/report.ts';
import { parseDefinition } from '../load/parse-definition.ts';
import { type DefinitionFile, filesUnder } from './files-under.ts';

export type DefinitionFiles = {
  readonly files: readonly DefinitionFile[];
  /** Paths that lead nowhere. */
  readonly issues: readonly Issue[];
};

/** Folder of the definitions that come with the program. */
export const shippedDefinitions = fileURLToPath(new URL('../../definitions/', import.meta.url));

/** The shipped files and those at the paths given, each once. `from`: the folder that file names are shown from. */
export const readDefinitions = (paths: readonly string[], from?: string): DefinitionFiles => {
  const found = [
    filesUnder(shippedDefinitions, shippedDefinitions),
    ...paths.map((path) => filesUnder(path, from)),
  ];
  return { files: once(found.flatMap((one) => one.files)), issues: found.flatMap((one) => one.issues) };
};

export const compileFiles = ({ files, issues }: DefinitionFiles): Result<Compiled> => {
  const compiled = compileDefinitions(files.map(({ file, text }) => parseDefinition(file, text)));
  const all = [...issues, ...compiled.issues];
  return compiled.ok && !hasErrors(issues) ? { ...compiled, issues: all } : { ok: false, issues: all };
};

/**
 * The shipped definitions and those at the paths given (files or folders), compiled together.
 *
 * A file that is among both is read once; an id that two files define is an error that names both places.
 */
export const loadEquipment = (paths: readonly string[] = []): Result<Compiled> =>
  compileFiles(readDefinitions(paths));

/** The name given by the user is kept where a path names a shipped file. */
const once = (files: readonly DefinitionFile[]): readonly DefinitionFile[] => [
  ...new Map(files.map((one) => [one.real, one])).values(),
];
