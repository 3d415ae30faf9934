import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { speechFor } from '../speech.ts';
import { english, spanish } from '../testing/made-of-visit.ts';
import { definitionsView } from './definitions-view.ts';

const folder = join(import.meta.dirname, '../../../../equipment/definitions');
const shipped = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .toSorted()
  .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));

const own = {
  name: 'own.yaml',
  text: [
    'family: kestrel',
    'title: { en: Kestrel (invented), es: Kestrel (inventado) }',
    'source: invented',
    'like: stock/piston-five-step',
    'kinds: [softener]',
  ].join('\n'),
};
const broken = { name: 'broken.yaml', text: 'family: heron\ntitle: Heron\nsorce: invented\n' };

const seen = (added: readonly { name: string; text: string }[], part?: string, reader = english) =>
  definitionsView(shipped, added, speechFor(reader), part);

describe('the definitions on this device', () => {
  it('are the shipped ones, with their counts', () => {
    const { families, files } = seen([]);
    expect(families.map(({ id }) => id)).toEqual(['osier', 'undescribed']);
    expect(families[0]).toMatchObject({ isOwn: false });
    expect(families[0]?.variants).toBeGreaterThan(20);
    expect(files).toEqual([]);
  });

  it('open to features, tells, parts and faults', () => {
    const { family } = seen([], 'osier');
    expect(family?.features.map(({ name }) => name)).toContain('Body size');
    expect(family?.features[0]?.values[0]).toEqual({ name: 'slim', share: '60\u00a0%' });
    expect(family?.tells.length).toBeGreaterThan(5);
    expect(family?.parts.find(({ id }) => id === 'sleeve')?.under).toContain('shut-outlet');
    expect(family?.faults.every(({ under }) => under !== undefined)).toBe(true);
  });

  it('open in Spanish', () => {
    const { family } = seen([], 'osier', spanish);
    expect(family?.features.map(({ name }) => name)).toContain('Tamaño del cuerpo');
  });
});

describe('a definition of one’s own', () => {
  it('is there beside the shipped ones, with what a look through it finds', () => {
    const view = seen([own], 'kestrel');
    expect(view.families.find(({ id }) => id === 'kestrel')).toMatchObject({
      isOwn: true,
      title: 'Kestrel (invented)',
    });
    expect(view.files).toMatchObject([{ name: 'own.yaml', isUsed: true }]);
    expect(view.family?.like).toBe('stock/piston-five-step');
  });

  it('that is faulty is left out, with place and mend, and takes no other with it', () => {
    const view = seen([broken, own]);
    expect(view.families.map(({ id }) => id)).toContain('kestrel');
    expect(view.families.map(({ id }) => id)).not.toContain('heron');
    const [file] = view.files;
    expect(file?.isUsed).toBe(false);
    const issue = file?.issues.find(({ says }) => says.includes('sorce'));
    expect(issue?.place).toBe('broken.yaml:3:1');
    expect(issue?.mend).toContain('source');
  });

  it('that is no definition at all says what was expected', () => {
    const [file] = seen([{ name: 'visit.yaml', text: 'schema: 1\nsite: { name: X }\n' }]).files;
    expect(file?.isUsed).toBe(false);
    expect(file?.issues.length).toBeGreaterThan(0);
  });
});
