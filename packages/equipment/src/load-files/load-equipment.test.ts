import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lintDefinitions } from '../lint/lint-family.ts';
import { loadEquipment, shippedDefinitions } from './load-equipment.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'definitions-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const write = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};
const family =
  'family: harrow\ntitle: {en: Harrow, es: Harrow}\nsource: invented\nlike: stock/piston-five-step\n';

test('the shipped definitions load, with a unit nobody has described among the families', () => {
  const loaded = loadEquipment();
  expect(loaded.issues.filter(({ severity }) => severity !== 'note')).toEqual([]);
  const families = loaded.ok ? [...loaded.value.equipment.families.keys()] : [];
  expect(families).toContain('undescribed');
  expect(families.length).toBeGreaterThan(1);
});

test('lint finds neither errors nor warnings in the shipped definitions', () => {
  const loaded = loadEquipment();
  const found = loaded.ok ? lintDefinitions(loaded.value) : [];
  expect(loaded.ok).toBe(true);
  expect(found.filter(({ severity }) => severity !== 'note')).toEqual([]);
});

test('own files and folders are added', () => {
  mkdirSync(join(folder, 'sub'));
  write('sub/harrow.yaml', family);
  write('read-me.txt', 'not a definition');
  const loaded = loadEquipment([folder]);
  expect(loaded.ok && loaded.value.equipment.families.has('harrow')).toBe(true);
});

test('a path that leads nowhere is an error that names it', () => {
  expect(loadEquipment([join(folder, 'nothing.yaml')]).issues).toMatchObject([{ code: 'file.missing' }]);
  expect(loadEquipment([folder]).issues).toMatchObject([{ code: 'file.none' }]);
});

test('a file that cannot be read is an error of its folder', () => {
  symlinkSync(join(folder, 'gone.yaml'), join(folder, 'link.yaml'));
  expect(loadEquipment([folder]).issues).toMatchObject([
    { code: 'file.unreadable', message: { values: { file: folder } } },
  ]);
});

test('a family that two files define is an error that names both places', () => {
  const paths = [write('a.yaml', family), write('b.yaml', `# again\n${family}`)];
  const { ok, issues } = loadEquipment(paths);
  expect(ok).toBe(false);
  expect(issues).toMatchObject([
    {
      code: 'definition.id-twice',
      place: { file: paths[1], line: 2 },
      message: { values: { file: paths[0], line: 1 } },
    },
  ]);
});

test('a shipped file named again is read once', () => {
  expect(loadEquipment([shippedDefinitions]).ok).toBe(true);
});
