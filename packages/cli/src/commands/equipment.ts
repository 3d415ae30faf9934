import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  equipmentSchema,
  idFromName,
  lintDefinitions,
  nearest,
  newDefinition,
  originsOf,
  readYaml,
} from '@brinewright/equipment';
import {
  compileFiles,
  type DefinitionFile,
  filesUnder,
  readDefinitions,
} from '@brinewright/equipment/load-files';
import { formatMessage, type Issue, type Language, type MessageKey, message } from '@brinewright/words';
import { countIssues, formatIssue, plainIssue } from './format-issue.ts';

/** What a verb needs of the command line. */
export type EquipmentIo = {
  readonly write: (text: string) => void;
  readonly json: boolean;
  readonly language: Language;
  /** Own definitions, from --equipment and the environment. */
  readonly equipment: readonly string[];
  readonly cwd: string;
  /** JSON Schema of a visit, for `schema --visit`. */
  readonly visitSchema?: () => unknown;
};

const fine = 0;
const faulty = 1;
const usage = 2;

/** The equipment verbs: check, schema, show, new. Gives the exit code. */
export const equipmentCommand = async (args: readonly string[], io: EquipmentIo): Promise<number> => {
  const [verb, ...rest] = args;
  switch (verb) {
    case 'check':
      return rest.some(isOption) ? wrongUsage(io) : check(rest, io);
    case 'schema':
      return schema(rest, io);
    case 'show':
      return rest.length === 1 && rest[0] !== undefined ? show(rest[0], io) : wrongUsage(io);
    case 'new':
      return create(rest, io);
    default:
      return wrongUsage(io);
  }
};

const isOption = (arg: string): boolean => arg.startsWith('--');

const say = (
  io: EquipmentIo,
  key: MessageKey,
  values: Readonly<Record<string, string | number>> = {},
): string => formatMessage(message(key, values), { language: io.language, system: 'us' });

const wrongUsage = (io: EquipmentIo): number => {
  io.write(`${say(io, 'equipment.cli.usage')}\n`);
  return usage;
};

const writeJson = (io: EquipmentIo, value: unknown): void => io.write(`${JSON.stringify(value, null, 2)}\n`);

const ownPaths = (io: EquipmentIo, paths: readonly string[] = []): readonly string[] =>
  [...io.equipment, ...paths].map((path) => resolve(io.cwd, path));

/** Everything wrong in the files at the paths, or in the shipped ones where there is no path. */
const check = (paths: readonly string[], io: EquipmentIo): number => {
  const read = readDefinitions(ownPaths(io, paths), io.cwd);
  const compiled = compileFiles(read);
  const issues = [...compiled.issues, ...(compiled.ok ? lintDefinitions(compiled.value) : [])];
  const looked = lookedAt(paths, read.files, io);
  const shown = issues.filter(
    ({ place, severity }) => severity === 'error' || place === undefined || looked.has(place.file),
  );
  report(shown, read.files, looked.size, io);
  return shown.some(({ severity }) => severity === 'error') ? faulty : fine;
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

const report = (
  issues: readonly Issue[],
  files: readonly DefinitionFile[],
  count: number,
  io: EquipmentIo,
): void => {
  const counts = { files: count, ...countIssues(issues) };
  if (io.json) {
    writeJson(io, { ...counts, issues: issues.map((issue) => plainIssue(issue, io.language)) });
    return;
  }
  const sources = new Map(files.map(({ file, text }) => [file, text]));
  for (const issue of issues) io.write(`${formatIssue(issue, sources, io.language)}\n\n`);
  io.write(`${say(io, 'equipment.cli.counts', counts)}\n`);
};

const schema = (options: readonly string[], io: EquipmentIo): number => {
  if (options.length === 0) {
    writeJson(io, equipmentSchema(io.language));
    return fine;
  }
  if (options.join() !== '--visit' || io.visitSchema === undefined) return wrongUsage(io);
  writeJson(io, io.visitSchema());
  return fine;
};

/** The merged family, a line for each value, with where it came from. */
const show = (id: string, io: EquipmentIo): number => {
  const read = readDefinitions(ownPaths(io), io.cwd);
  const compiled = compileFiles(read);
  if (!compiled.ok) {
    report(compiled.issues, read.files, read.files.length, io);
    return faulty;
  }
  const source = compiled.value.sources.get(id);
  if (source === undefined) return noFamily(id, [...compiled.value.sources.keys()], io);
  const origins = originsOf(source);
  if (io.json) writeJson(io, { family: { id, ...source.written }, origins: Object.fromEntries(origins) });
  else
    for (const line of linesOf(source.written, []))
      io.write(`${line.text}${placeText(origins, line.path)}\n`);
  return fine;
};

const noFamily = (word: string, known: readonly string[], io: EquipmentIo): number => {
  const near = nearest(word, known);
  io.write(`${say(io, 'equipment.cli.no-family', { word, known: known.join(', ') })}\n`);
  if (near !== undefined) io.write(`${say(io, 'issue.did-you-mean', { near })}\n`);
  return faulty;
};

type Line = { readonly path: readonly string[]; readonly text: string };

const linesOf = (value: unknown, path: readonly string[]): readonly Line[] => {
  if (typeof value !== 'object' || value === null || isPlainList(value)) {
    return [
      { path, text: `${path.join('.')}: ${typeof value === 'string' ? value : JSON.stringify(value)}` },
    ];
  }
  return Object.entries(value).flatMap(([key, inner]) => linesOf(inner, [...path, key]));
};

const isPlainList = (value: object): boolean =>
  Array.isArray(value) && value.every((item) => typeof item !== 'object' || item === null);

const placeText = (origins: ReturnType<typeof originsOf>, path: readonly string[]): string => {
  for (let length = path.length; length > 0; length -= 1) {
    const place = origins.get(path.slice(0, length).join('.'));
    if (place !== undefined) return `  # ${place.file}:${place.line}`;
  }
  return '';
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
  if (visit === 'unreadable') return faulty;
  const base = like === undefined || like.startsWith('stock/') ? { like } : copyOf(like, io);
  if (base === 'unknown') return faulty;
  io.write(
    newDefinition(name, {
      ...base,
      language: io.language,
      ...(visit === undefined ? {} : { fromVisit: visit.data }),
    }),
  );
  return fine;
};

/** The file of a family, to begin from. */
const copyOf = (family: string, io: EquipmentIo): { readonly copyOf: string } | 'unknown' => {
  const read = readDefinitions(ownPaths(io), io.cwd);
  const compiled = compileFiles(read);
  const sources = compiled.ok ? compiled.value.sources : undefined;
  const file = sources?.get(family)?.file;
  const text = read.files.find((one) => one.file === file)?.text;
  if (text !== undefined) return { copyOf: text };
  noFamily(family, [...(sources?.keys() ?? [])], io);
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
