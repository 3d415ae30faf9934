import { expect, test } from 'vitest';
import { compileDefinitions } from '../compile/compile-definitions.ts';
import { lintDefinitions } from '../lint/lint-family.ts';
import { parseDefinition } from '../load/parse-definition.ts';
import { readDefinitions } from '../load-files/load-equipment.ts';
import { idFromName, newDefinition } from './new-definition.ts';

const { files } = readDefinitions([]);
const shipped = files.map(({ file, text }) => parseDefinition(file, text));

const lookedAt = (text: string) => {
  const compiled = compileDefinitions([...shipped, parseDefinition('draft.yaml', text)]);
  const issues = [...compiled.issues, ...(compiled.ok ? lintDefinitions(compiled.value) : [])];
  const own = issues.filter(({ place }) => place?.file === 'draft.yaml');
  return {
    own,
    family: (id: string) => (compiled.ok ? compiled.value.equipment.families.get(id) : undefined),
  };
};

test.each(['en', 'es'] as const)('a new definition in %s loads and gets nothing but notes', (language) => {
  const { own, family } = lookedAt(newDefinition('Harrow side valve', { language }));
  expect(own.map(({ severity, code }) => [severity, code])).toEqual([
    ['note', 'lint.no-water-feature'],
    ['note', 'lint.no-spanish'],
    ['note', 'lint.still-to-enter'],
  ]);
  expect(family('harrow-side-valve')?.operations.length).toBeGreaterThan(20);
});

test('the lines it offers in comments are sound once they are used', () => {
  const draft = newDefinition('Harrow');
  const offered = draft.replaceAll(/^# (?=[a-z]+:|[ -])/gmu, '');
  expect(offered.split('\n').filter((line) => line.startsWith('bore:'))).toHaveLength(1);
  const { own, family } = lookedAt(offered);
  expect(own.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(family('harrow')).toMatchObject({ bores: [{ id: 'main' }], parts: [{ number: '110' }] });
});

// The example of the contract for definitions (invented).
const visit = {
  subject: 's1',
  conditioners: [
    { id: 's0' },
    {
      id: 's1',
      family: 'undescribed',
      kind: 'softener',
      tank: { girth: '50.3 in', wall: '0.25 in' },
      media: { resin: { depth: '34 in', free: '20 in' } },
      measured: {
        backwash: '6.52 gpm',
        draw: { value: '0.70 gpm', how: 'measured' },
        'slow-rinse': '1.40 gpm',
        refill: '0.968 gpm',
        at: '55 psi',
      },
      controller: {
        holds: ['backwash', 'brine', 'fast-rinse', 'refill'],
        times: '1 min to 99 min by 1 min',
        starts: ['metered'],
        days: '1 to 30 by 1',
        volumes: '50 gal to 9950 gal by 50 gal',
      },
    },
  ],
};

test('a visit to an undescribed unit becomes the draft of its family', () => {
  const text = newDefinition('Found unit', { fromVisit: visit });
  const { own, family } = lookedAt(text);
  expect(own.filter(({ severity }) => severity !== 'note')).toEqual([]);
  const draft = family('found-unit');
  expect(draft?.like).toBe('stock/piston-five-step');
  expect(draft?.injectors[0]?.at).toMatchObject([
    { pressure: { as: '55 psi' }, draw: { as: '0.70 gpm' }, slowRinse: { as: '1.40 gpm' } },
  ]);
  expect(draft?.controls.drain[0]?.rate.as).toBe('6.52 gpm');
  expect(draft?.controls.refill[0]?.rate.as).toBe('0.968 gpm');
  expect(draft?.controllers[0]).toMatchObject({
    times: { max: { as: '99 min' } },
    starts: ['metered'],
    days: { min: 1, max: 30, by: 1 },
    volumes: { max: { as: '9950 gal' } },
  });
  expect(text).toContain('#   girth: 50.3 in');
});

test('what a visit lacks or cannot be read is left to be entered', () => {
  for (const fromVisit of [
    null,
    7,
    [],
    {},
    { conditioners: [{ measured: { draw: '3 furlongs' }, controller: { holds: ['x'] } }] },
  ]) {
    const { own } = lookedAt(newDefinition('Found unit', { fromVisit }));
    expect(own.filter(({ severity }) => severity !== 'note')).toEqual([]);
  }
});

test('a definition may begin from another family', () => {
  const osier = files.find(({ text }) => text.includes('family: osier'))?.text ?? '';
  const { own, family } = lookedAt(newDefinition('Willow', { copyOf: osier }));
  expect(own.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(family('willow')?.features.length).toBe(family('osier')?.features.length);
});

test('an id is made from any name', () => {
  expect(idFromName('  Válvula Ñandú 5/4 ')).toBe('valvula-nandu-5-4');
  expect(idFromName('***')).toBe('');
});
