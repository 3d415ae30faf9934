import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  equipmentSchema,
  idFromName,
  lintDefinitions,
  newDefinition,
  readYaml,
} from '@brinewright/equipment';
import {
  compileFiles,
  type DefinitionFile,
  filesUnder,
  readDefinitions,
} from '@brinewright/equipment/load-files';
import { exit } from '../exit.ts';
import { type EquipmentIo, ownPaths, say, writeJson, writeUnknown } from './equipment-io.ts';
import { reportIssues } from './equipment-report.ts';
import { showFamily } from './equipment-show.ts';
import { formatIssue } from './format-issue.ts';

/** The equipment verbs: check, schema, show, new. Gives the exit code. */
export const equipmentCommand = async (args: readonly string[], io: EquipmentIo): Promise<number> => {
  const [verb, ...rest] = args;
  switch (verb) {
    case 'check':
      return rest.some(isOption) ? wrongUsage(io) : check(rest, io);
    case 'schema':
      return schema(rest, io);
    case 'show':
      return show(rest, io);
    case 'new':
      return create(rest, io);
    default:
      return wrongUsage(io);
  }
};

const isOption = (arg: string): boolean => arg.startsWith('--');

const wrongUsage = (io: EquipmentIo): number => {
  io.write(`${say(io, 'equipment.cli.usage')}\n`);
  return exit.usage;
};

/** Everything wrong in the files at the paths, or in the shipped ones where there is no path. */
const check = (paths: readonly string[], io: EquipmentIo): number => {
  const read = readDefinitions(ownPaths(io, paths), io.cwd);
  const compiled = compileFiles(read);
  const issues = [...compiled.issues, ...(compiled.ok ? lintDefinitions(compiled.value) : [])];
  const looked = lookedAt(paths, read.files, io);
  const shown = issues.filter(
    ({ place, severity }) => severity === 'error' || place === undefined || looked.has(place.file),
  );
  reportIssues(shown, read.files, looked.size, io);
  return shown.some(({ severity }) => severity === 'error') ? exit.faulty : exit.fine;
};

/** Names of the files that were asked about. */
const lookedAt = (
  paths: readonly string[],
  files: readonly DefinitionFile[],
  io: EquipmentIo,
): ReadonlySet<string> => {
  if (paths.length === 0) return new Set(files.map(({ file }) => file));
  const real = new Set(
    paths.flatMap((path) => filesUnder(resolve(io.cwd, path)).files.map((one) => one.real)),
  );
  return new Set(files.filter((one) => real.has(one.real)).map(({ file }) => file));
};

const schema = (options: readonly string[], io: EquipmentIo): number => {
  if (options.length === 0) {
    writeJson(io, equipmentSchema(io.language));
    return exit.fine;
  }
  if (options.join() !== '--visit' || io.visitSchema === undefined) return wrongUsage(io);
  writeJson(io, io.visitSchema());
  return exit.fine;
};

const show = (args: readonly string[], io: EquipmentIo): number => {
  const [family, section, ...more] = args;
  const isWrong = family === undefined || more.length > 0 || args.some(isOption);
  return isWrong ? wrongUsage(io) : showFamily(family, section, io);
};

type NewOptions = { readonly name: string; readonly like?: string; readonly from?: string };

const newOptions = (args: readonly string[]): NewOptions | undefined => {
  const [name, ...rest] = args;
  if (name === undefined || isOption(name) || idFromName(name) === '') return undefined;
  const given = new Map<string, string>();
  for (let index = 0; index < rest.length; index += 2) {
    const [option, value] = rest.slice(index, index + 2);
    if (option === undefined || value === undefined || (option !== '--like' && option !== '--from'))
      return undefined;
    given.set(option, value);
  }
  const like = given.get('--like');
  const from = given.get('--from');
  return { name, ...(like === undefined ? {} : { like }), ...(from === undefined ? {} : { from }) };
};

const create = (args: readonly string[], io: EquipmentIo): number => {
  const options = newOptions(args);
  if (options === undefined) return wrongUsage(io);
  const { name, like, from } = options;
  const visit = from === undefined ? undefined : readVisit(from, io);
  if (visit === 'unreadable') return exit.faulty;
  const base = like === undefined || like.startsWith('stock/') ? { like } : copyOf(like, io);
  if (base === 'unknown') return exit.faulty;
  io.write(
    newDefinition(name, {
      ...base,
      language: io.language,
      ...(visit === undefined ? {} : { fromVisit: visit.data }),
    }),
  );
  return exit.fine;
};

/** The file of a family, to begin from. */
const copyOf = (family: string, io: EquipmentIo): { readonly copyOf: string } | 'unknown' => {
  const read = readDefinitions(ownPaths(io), io.cwd);
  const compiled = compileFiles(read);
  const sources = compiled.ok ? compiled.value.sources : undefined;
  const file = sources?.get(family)?.file;
  const text = read.files.find((one) => one.file === file)?.text;
  if (text !== undefined) return { copyOf: text };
  writeUnknown(io, 'equipment.cli.no-family', family, [...(sources?.keys() ?? [])]);
  return 'unknown';
};

const readVisit = (path: string, io: EquipmentIo): { readonly data: unknown } | 'unreadable' => {
  const file = resolve(io.cwd, path);
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) {
    io.write(`${say(io, 'issue.file.missing', { file: path })} ${say(io, 'issue.file.missing.mend')}\n`);
    return 'unreadable';
  }
  const text = readFileSync(file, 'utf8');
  const read = readYaml(path, text);
  if ('data' in read) return { data: read.data };
  for (const issue of read.issues) io.write(`${formatIssue(issue, new Map([[path, text]]), io.language)}\n`);
  return 'unreadable';
};
