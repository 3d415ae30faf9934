import { quantity } from '@brinewright/units';
import { describe, expect, it } from 'vitest';
import { parseVisit, visitJsonSchema, writeVisit } from './parse-visit.ts';
import type { Visit } from './schema.ts';

const least = 'schema: 1\nid: v1\nsite: { name: Site }\nsubject: s1\n';
const unit = 'conditioners:\n  - { id: s1, family: osier, kind: softener }\n';

const visitFrom = (text: string): Visit => {
  const read = parseVisit('visit.yaml', text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
};

describe('reading a visit', () => {
  it('takes a plain quantity as known in the usual way of its field', () => {
    const visit = visitFrom(`${least}${unit}demand: { daily: 700 gal }\nsupply: { pressure: 60 psi }\n`);
    expect(visit.demand?.daily).toMatchObject({ how: 'told', value: { kind: 'volume', as: '700 gal' } });
    expect(visit.supply?.pressure?.how).toBe('measured');
  });

  it('takes a quantity with how it is known and its uncertainty', () => {
    const visit = visitFrom(
      `${least}${unit}demand: { daily: { value: 700 gal, how: measured, u: 30 gal } }\n`,
    );
    // 1 US gallon is 3.785411784 L, so 700 gal are 2.649788 m³ and 30 gal 0.113562 m³.
    expect(visit.demand?.daily?.how).toBe('measured');
    expect(visit.demand?.daily?.value.si).toBeCloseTo(2.649788, 6);
    expect(visit.demand?.daily?.u?.si).toBeCloseTo(0.113562, 6);
  });

  it('keeps all that can be read and says where the rest went wrong', () => {
    const read = parseVisit(
      'visit.yaml',
      `${least}${unit}demand: { daily: 700, peak: 12 gpm }\ncomplaint: { words: Hard }\n`,
    );
    if (!read.ok) throw new Error('not read');
    expect(read.value.demand?.peak?.value.as).toBe('12 gpm');
    expect(read.value.demand?.daily).toBeUndefined();
    expect(read.value.complaint?.words).toBe('Hard');
    expect(read.issues).toHaveLength(1);
    expect(read.issues[0]?.at).toEqual(['demand', 'daily']);
    expect(read.issues[0]?.place?.line).toBe(7);
    expect(read.issues[0]?.mend).toBeDefined();
  });

  it('gives no visit where no unit is left, and says which key is missing', () => {
    const read = parseVisit('visit.yaml', least);
    expect(read.ok).toBe(false);
    expect(read.issues.map(({ at }) => at)).toContainEqual(['conditioners']);
  });

  it('sets a broken list element aside and keeps its neighbours', () => {
    const read = parseVisit(
      'visit.yaml',
      `${least}${unit}stock:\n  - { part: a, count: 1 }\n  - { part: b, count: many }\n  - { part: c, count: 3 }\n`,
    );
    if (!read.ok) throw new Error('not read');
    expect(read.value.stock?.map(({ part }) => part)).toEqual(['a', 'c']);
  });
});

describe('writing a visit', () => {
  it('writes a quantity that nobody entered in SI, so that it can be read again', () => {
    const visit = visitFrom(least + unit);
    const computed: Visit = { ...visit, meterNow: quantity('volume', 0.25) };
    expect(visitFrom(writeVisit(computed)).meterNow?.si).toBe(0.25);
  });

  it('keeps the uncertainty of a quantity', () => {
    const text = `${least}${unit}demand: { daily: { value: 700 gal, how: told, u: 30 gal } }\n`;
    expect(writeVisit(visitFrom(text))).toContain('u: 30 gal');
  });
});

describe('the JSON Schema of a visit', () => {
  it('asks for what a visit cannot be without', () => {
    expect(visitJsonSchema().required?.toSorted()).toEqual([
      'conditioners',
      'id',
      'schema',
      'site',
      'subject',
    ]);
  });
});
