/*
 * Which package may import which. Dependencies in each package.json say it once; this reads every import and holds
 * it against the table, so that an accidental path or a Node module in the engine fails here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

const root = join(import.meta.dirname, '..');

const mayImport: Readonly<Record<string, readonly string[]>> = {
  units: [],
  words: ['units'],
  physics: ['units', 'words'],
  equipment: ['units', 'words', 'physics'],
  service: ['units', 'words', 'physics', 'equipment'],
  papers: ['units', 'words', 'equipment', 'service'],
  journal: ['units', 'words', 'equipment', 'service'],
  server: ['units', 'words', 'physics', 'equipment', 'service', 'papers', 'journal'],
  app: ['units', 'words', 'equipment', 'service', 'papers', 'journal'],
  cli: ['units', 'words', 'physics', 'equipment', 'service', 'papers', 'journal', 'server', 'checks'],
  checks: ['units', 'physics', 'equipment'],
  bench: ['equipment', 'service', 'journal', 'server'],
  faults: ['journal', 'server'],
};

/** Where Node's own modules may be used: the edges. */
const mayUseNode = (file: string): boolean =>
  /^(packages\/(cli|server)|checks|bench|faults|scripts|e2e)\//u.test(file) ||
  /^packages\/app\/(vite\.config|build\/)/u.test(file) ||
  file.startsWith('packages/equipment/src/load-files/') ||
  file.startsWith('packages/app/src/engine/testing/') ||
  file.endsWith('.test.ts') ||
  file.includes('/test/');

const filesUnder = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/u.test(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)))
    .filter((file) => !/(^|\/)(node_modules|\.build|dist)\//u.test(file));

const packageOf = (file: string): string | undefined =>
  /^packages\/([^/]+)\//u.exec(file)?.[1] ?? /^(checks|bench|faults)\//u.exec(file)?.[1];

const importsOf = (text: string): string[] =>
  [...text.matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/gu)].flatMap((match) => match[1] ?? []);

const faultOf = (file: string, name: string, imported: string): string | undefined => {
  const target = /^@brinewright\/([^/]+)/u.exec(imported)?.[1];
  if (target !== undefined) {
    if (target === name || mayImport[name]?.includes(target)) return undefined;
    if (name === 'service' && /\.test\.ts$/u.test(file)) return undefined;
    return `${file}: ${name} may not import ${target}`;
  }
  if (imported.startsWith('node:') && !mayUseNode(file)) return `${file}: ${imported} belongs to the edges`;
  if (
    imported.startsWith('.') &&
    relative(join(root, folderOf(file)), join(root, file, '..', imported)).startsWith('..')
  )
    return `${file}: ${imported} leaves its package`;
  return undefined;
};

const folderOf = (file: string): string =>
  file.startsWith('packages/') ? file.split('/').slice(0, 2).join('/') : (file.split('/')[0] ?? '');

const faults = ['packages', 'checks', 'bench', 'faults'].flatMap(filesUnder).flatMap((file) => {
  const name = packageOf(file);
  if (name === undefined || file.endsWith('.test.ts')) return [];
  return importsOf(readFileSync(join(root, file), 'utf8')).flatMap(
    (imported) => faultOf(file, name, imported) ?? [],
  );
});

for (const fault of faults) console.error(fault);
console.log(`import directions: ${faults.length === 0 ? 'fine' : `${faults.length} wrong`}`);
process.exitCode = faults.length === 0 ? 0 : 1;
