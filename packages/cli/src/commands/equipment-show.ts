import { type Compiled, originsOf } from '@brinewright/equipment';
import { compileFiles, readDefinitions } from '@brinewright/equipment/load-files';
import { exit } from '../exit.ts';
import { idsText, listIds } from './equipment-ids.ts';
import { type EquipmentIo, ownPaths, say, writeJson, writeUnknown } from './equipment-io.ts';
import { reportIssues } from './equipment-report.ts';

type Source = Compiled['sources'] extends ReadonlyMap<string, infer One> ? One : never;

/** The merged family or a section of it, a line for each value, with where it came from; or its ids. */
export const showFamily = (id: string, section: string | undefined, io: EquipmentIo): number => {
  const read = readDefinitions(ownPaths(io), io.cwd);
  const compiled = compileFiles(read);
  if (!compiled.ok) {
    reportIssues(compiled.issues, read.files, read.files.length, io);
    return exit.faulty;
  }
  const { sources, equipment } = compiled.value;
  const source = sources.get(id);
  const family = equipment.families.get(id);
  if (source === undefined || family === undefined) {
    writeUnknown(io, 'equipment.cli.no-family', id, [...sources.keys()]);
    return exit.faulty;
  }
  if (section !== 'ids') return showLines(source, section, io);
  const ids = listIds(family, io.language);
  if (io.json) writeJson(io, { family: id, ids });
  else io.write(idsText(ids, io));
  return exit.fine;
};

const showLines = (source: Source, section: string | undefined, io: EquipmentIo): number => {
  const shown = section === undefined ? source.written : sectionOf(source, section);
  if (shown === undefined) {
    writeUnknown(io, 'equipment.cli.no-section', section ?? '', [...sectionNames, 'ids']);
    return exit.usage;
  }
  const origins = originsOf(source);
  if (io.json) {
    const keys = Object.keys(shown);
    const kept = [...origins].filter(([path]) =>
      keys.some((key) => path === key || path.startsWith(`${key}.`)),
    );
    writeJson(io, {
      family: { id: source.id, ...shown },
      origins: Object.fromEntries(section === undefined ? origins : kept),
    });
    return exit.fine;
  }
  const lines = linesOf(shown, []);
  for (const line of lines) io.write(`${line.text}${placeText(origins, line.path)}\n`);
  if (lines.length === 0)
    io.write(`${say(io, 'equipment.cli.empty-section', { family: source.id, section: section ?? '' })}\n`);
  return exit.fine;
};

/** Sections that can be shown alone; a kit is a part that holds others. */
const sectionNames = [
  'limits',
  'features',
  'never',
  'tells',
  'bore',
  'stack',
  'injectors',
  'controls',
  'controllers',
  'meters',
  'parts',
  'kits',
  'conversions',
  'tools',
  'operations',
  'faults',
  'tests',
  'complaints',
  'changes',
  'cautions',
] as const;

type SectionName = (typeof sectionNames)[number];

const isSectionName = (name: string): name is SectionName => sectionNames.some((one) => one === name);

const sectionOf = ({ written }: Source, name: string): Readonly<Record<string, unknown>> | undefined => {
  if (!isSectionName(name)) return undefined;
  if (name === 'bore') return { bores: written.bores ?? {} };
  if (name !== 'kits') return { [name]: written[name] ?? {} };
  const kits = Object.entries(written.parts ?? {}).filter(([, { holds }]) => holds !== undefined);
  return { parts: Object.fromEntries(kits) };
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
