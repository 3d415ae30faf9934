import { shippedEquipment } from '@brinewright/service/testing';
import { describe, expect, it } from 'vitest';
import { speechFor } from '../speech.ts';
import { demoVisit, english, now, spanish } from '../testing/made-of-visit.ts';
import { searchOf, type WhatIf, whatIfOf } from './what-if/numbers.ts';
import { numbersOf, whatIfView } from './what-if-view.ts';

const equipment = shippedEquipment();
const seen = (numbers: WhatIf, reader = english) => whatIfView(numbers, equipment, speechFor(reader), now);

const all: WhatIf = {
  hardness: '19 gpg',
  coldest: '50 degF',
  warmest: '60 degF',
  daily: '700 gal',
  diameter: '14 in',
  depth: '34 in',
  free: '20 in',
  backwash: '5 gpm',
  draw: '0.45 gpm',
  slow: '0.85 gpm',
  refill: '0.5 gpm',
  dose: '8 lb/ft3',
};

const setIn = (numbers: WhatIf, name: string): string | undefined =>
  seen(numbers).program.rows.find((row) => row.name === name)?.set?.text;

describe('a program from numbers', () => {
  it('is the handbook sum: 8 lb/ft³ over 3.03 ft³ dissolved at 2.9 lb a gallon and refilled at 0.5 gpm', () => {
    // π/4 × 14² in² × 34 in = 5,234 in³ = 3.03 ft³; × 8 = 24.2 lb; brine at 60 °F takes up about 3 lb a gallon.
    expect(setIn(all, 'refill')).toBe('16\u00a0min');
  });

  it('follows a number that changes', () => {
    expect(setIn({ ...all, refill: '1 gpm' }, 'refill')).toBe('8\u00a0min');
    expect(seen({ ...all, dose: '15 lb/ft3' }).program.dose?.text).toBe('15\u00a0lb/ft³');
  });

  it('says what is missing, and makes nothing up', () => {
    const { program, fields } = seen({});
    expect(program.gaps.length).toBeGreaterThan(3);
    expect(program.rows.flatMap(({ set }) => set?.text ?? []).filter((text) => text.includes('gal'))).toEqual(
      [],
    );
    expect(fields.every(({ figure }) => figure === '')).toBe(true);
  });

  it('says what is wrong with a number of a link, and how to mend it', () => {
    const field = seen({ ...all, hardness: '19 gpn' }).fields.find(({ name }) => name === 'hardness');
    expect(field?.wrong).toContain('“gpn” is not a known unit');
    expect(field?.figure).toBe('19');
  });

  it('speaks Spanish and keeps the units that were typed', () => {
    const { fields, program } = seen(all, spanish);
    expect(fields.find(({ name }) => name === 'hardness')).toMatchObject({ label: 'Dureza', unit: 'gpg' });
    expect(JSON.stringify(program)).not.toMatch(/‹/u);
  });
});

describe('the address', () => {
  it('holds the numbers and gives them back', () => {
    expect(whatIfOf(`?${searchOf(all)}`)).toEqual(all);
    expect(searchOf({})).toBe('');
  });

  it('leaves out what it does not know, and what is too long to be a number', () => {
    const odd = whatIfOf(`?speed=9&hardness=${'9'.repeat(500)}&depth=%20`);
    expect(Object.keys(odd)).toEqual(['hardness']);
    expect(odd.hardness?.length).toBe(40);
  });
});

it('begins from the numbers of a unit', () => {
  const numbers = numbersOf(demoVisit('undescribed'));
  expect(numbers).toMatchObject({ depth: '34 in', draw: '0.70 gpm', coldest: '50 degF', daily: '800 gal' });
});
