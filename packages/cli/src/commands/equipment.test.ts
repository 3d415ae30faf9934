import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { equipmentCommand } from './equipment.ts';
import type { EquipmentIo } from './equipment-io.ts';

let cwd = '';
beforeEach(() => {
  cwd = mkdtempSync(join(tmpdir(), 'equipment-'));
});
afterEach(() => rmSync(cwd, { recursive: true }));

const run = async (args: readonly string[], more: Partial<EquipmentIo> = {}) => {
  let out = '';
  const write = (text: string): void => {
    out += text;
  };
  const io = { write, json: false, language: 'en', equipment: [], cwd, ...more } as const;
  const code = await equipmentCommand(args, io);
  return { code, out };
};

const write = (name: string, text: string): void => writeFileSync(join(cwd, name), text);
const family =
  'family: harrow\ntitle: {en: Harrow, es: Harrow}\nsource: invented\nlike: stock/piston-five-step\n';

test('check shows place, line with a mark, reason and mend, and ends with 1', async () => {
  write('harrow.yaml', `${family}tels: {}\n`);
  expect(await run(['check', 'harrow.yaml'])).toEqual({
    code: 1,
    out: [
      'harrow.yaml:5:1  error  schema.unknown-key',
      '     5 | tels: {}',
      '       | ^',
      '  tels is not known here.',
      '  Write tells.',
      '',
      '1 file: 1 error, 0 warnings, 0 notes',
      '',
    ].join('\n'),
  });
});

test('check speaks Spanish', async () => {
  write('harrow.yaml', `${family}tels: {}\n`);
  const { out } = await run(['check', 'harrow.yaml'], { language: 'es' });
  expect(out).toContain('Aquí no se conoce tels.\n  Escriba tells.');
  expect(out).toContain('1 archivo: 1 error, 0 advertencias, 0 notas');
});

test('a sound draft ends with 0 and says what is still to enter', async () => {
  write('harrow.yaml', family);
  const { code, out } = await run(['check', 'harrow.yaml']);
  expect(code).toBe(0);
  expect(out).toContain('Still to enter: limits.pressure');
});

test('check without a path looks at the shipped definitions', async () => {
  const { code, out } = await run(['check']);
  expect(code).toBe(0);
  expect(out).toMatch(/\d+ files: 0 errors, 0 warnings/u);
});

test('a path that leads nowhere is told', async () => {
  const { code, out } = await run(['check', 'nothing.yaml']);
  expect(code).toBe(1);
  expect(out).toContain('nothing.yaml does not exist.');
});

test('check as JSON has places, reasons and mends', async () => {
  write('harrow.yaml', `${family}tels: {}\n`);
  const { code, out } = await run(['check', 'harrow.yaml'], { json: true });
  expect(code).toBe(1);
  expect(JSON.parse(out)).toMatchObject({
    errors: 1,
    issues: [{ code: 'schema.unknown-key', file: 'harrow.yaml', line: 5, column: 1, mend: 'Write tells.' }],
  });
});

test('show prints the merged family with where each line came from', async () => {
  write('harrow.yaml', `${family}operations:\n  cover-off: {minutes: 7}\n`);
  const { code, out } = await run(['show', 'harrow'], { equipment: ['harrow.yaml'] });
  expect(code).toBe(0);
  expect(out).toContain('operations.cover-off.minutes: 7  # harrow.yaml:6\n');
  expect(out).toMatch(/operations\.cover-off\.order\.en: .*# stock\/piston-five-step\.yaml:\d+\n/u);
});

test('show of a section prints only that', async () => {
  write('harrow.yaml', `${family}operations:\n  cover-off: {minutes: 7}\n`);
  const of = async (section: string) => run(['show', 'harrow', section], { equipment: ['harrow.yaml'] });
  const lines = (await of('operations')).out.trim().split('\n');
  expect(lines).toContain('operations.cover-off.minutes: 7  # harrow.yaml:6');
  expect(lines.filter((line) => !line.startsWith('operations.'))).toEqual([]);
  expect((await of('parts')).out).toBe('harrow has nothing under parts.\n');
  const data: unknown = JSON.parse((await run(['show', 'osier', 'kits'], { json: true })).out);
  expect(data).toMatchObject({ family: { id: 'osier', parts: { 'reseal-slim-epdm': { is: 'kit' } } } });
  expect(data).not.toHaveProperty('family.parts.drain-d1');
  expect(data).not.toHaveProperty('family.operations');
  expect((await run(['show', 'osier', 'bore'])).out).toMatch(/^bores\.main\.ports: .*osier\.yaml:\d+\n/u);
});

test('show of an unknown section names the one that was meant and ends with 2', async () => {
  const { code, out } = await run(['show', 'osier', 'operation']);
  expect(code).toBe(2);
  expect(out).toContain('operation is not a section');
  expect(out).toContain('Write operations.');
});

test('show ids lists what references name, with titles in the language asked for', async () => {
  const { code, out } = await run(['show', 'osier', 'ids']);
  expect(code).toBe(0);
  expect(out).toMatch(/^ {2}cover-off +Take the cover off$/mu);
  expect(out).toMatch(/^ {2}seal +\d+ faults, 1 operation, 4 parts$/mu);
  expect(
    out
      .split('\n')
      .filter((line) => /^[a-z]/u.test(line))
      .map((line) => line.split(',')[0]),
  ).toEqual(['roles', 'operations', 'tests', 'faults', 'tools', 'cautions']);
  const spanish = await run(['show', 'osier', 'ids'], { language: 'es' });
  expect(spanish.out).toMatch(/^ {2}seal +\d+ fallas, 1 operación, 4 refacciones$/mu);
  const data: unknown = JSON.parse((await run(['show', 'osier', 'ids'], { json: true })).out);
  expect(data).toMatchObject({
    family: 'osier',
    ids: { roles: expect.arrayContaining([expect.objectContaining({ id: 'seal', parts: 4 })]) },
  });
});

test('show of an unknown family names the one that was meant', async () => {
  const { code, out } = await run(['show', 'undescribd']);
  expect(code).toBe(1);
  expect(out).toContain('Write undescribed.');
});

test('schema is JSON Schema; that of a visit comes from whoever has it', async () => {
  expect(JSON.parse((await run(['schema'])).out)).toHaveProperty('$schema');
  expect((await run(['schema', '--visit'], { visitSchema: () => ({ title: 'visit' }) })).out).toContain(
    'visit',
  );
  expect((await run(['schema', '--visit'])).code).toBe(2);
});

test('new writes a draft that check passes, also from a visit', async () => {
  write('visit.yaml', 'conditioners:\n  - measured: {backwash: 6.52 gpm}\n');
  const made = await run(['new', 'Harrow side', '--from', 'visit.yaml']);
  expect(made.code).toBe(0);
  expect(made.out).toContain('6.52 gpm');
  write('draft.yaml', made.out);
  expect((await run(['check', 'draft.yaml'])).code).toBe(0);
});

test('new like a family begins from that family', async () => {
  const { code, out } = await run(['new', 'Willow', '--like', 'osier']);
  expect(code).toBe(0);
  expect(out).toContain('family: willow');
  expect((await run(['new', 'Willow', '--like', 'osir'])).code).toBe(1);
});

test.each([
  [[]],
  [['chek']],
  [['check', '--strict']],
  [['show']],
  [['show', 'osier', 'parts', 'more']],
  [['new']],
  [['new', 'a', '--like']],
  [['new', '***']],
])('wrong usage %j ends with 2 and says how', async (args) => {
  const { code, out } = await run(args);
  expect(code).toBe(2);
  expect(out).toContain('equipment check PATH');
});
