import { expect, test } from 'vitest';
import { familyFrom, smallFamily, smallStock } from '../../test/small-family.ts';
import { loadEquipment } from '../load-files/load-equipment.ts';
import type { Family } from '../model/family.ts';
import { variantsOf } from '../variants/variants-of.ts';
import { boreOf, type FittedBore } from './bore-of.ts';
import { partCount, stackCounts } from './stack-counts.ts';

const small = familyFrom(smallStock, smallFamily);

const fitted = (family: Family, wanted: Readonly<Record<string, string>> = {}): FittedBore => {
  const build = variantsOf(family).find(({ variant }) =>
    Object.entries(wanted).every(([feature, value]) => variant[feature] === value),
  );
  const bore = build === undefined ? undefined : boreOf(family, build.variant);
  if (bore === undefined) throw new Error('no bore');
  return bore;
};

const osier = (): Family => {
  const loaded = loadEquipment();
  const family = loaded.ok ? loaded.value.equipment.families.get('osier') : undefined;
  if (family === undefined) throw new Error('no osier');
  return family;
};

test('open seals follow from the joins by adjacency', () => {
  const bore = fitted(small);
  expect(bore.open('service')).toEqual([2, 5]);
  expect(bore.open('backwash')).toEqual([3, 7]);
  expect(bore.joins('brine')).toEqual([['BOT', 'DR']]);
  expect(bore.leak(3)).toEqual(['TOP', 'DR']);
});

test('a torn seal joins the ports on both sides of it', () => {
  expect(fitted(small).joins('service', { torn: 3 })).toEqual([
    ['BOT', 'OUT'],
    ['DR', 'IN', 'TOP'],
  ]);
});

test('without lengths the bore is placed and marked schematic', () => {
  expect(fitted(small).lengths.schematic).toBe(true);
  expect(fitted(osier()).lengths.schematic).toBe(false);
});

// Joins of the reference geometry (invented by us, lengths in mm), worked out there apart from this code.
test('the shipped family joins at each stop what its reference geometry says', () => {
  const raw = fitted(osier(), { regeneration: 'raw-pass' });
  const at = (stop: Parameters<FittedBore['joins']>[0]) => raw.joins(stop).map((group) => group.join('+'));
  expect(at('service')).toEqual(['BOT+OUT', 'IN+TOP']);
  expect(at('backwash')).toEqual(['BOT+IN+OUT', 'DR+TOP']);
  expect(at('brine')).toEqual(['BOT+DR', 'IN+OUT']);
  expect(at('fast-rinse')).toEqual(['BOT+DR', 'IN+OUT+TOP']);
  expect(raw.open('backwash')).toEqual([3, 6, 7]);
});

const text = (groups: ReturnType<FittedBore['joins']>): string =>
  groups.map((group) => group.join('+')).join(' ');

test('a wrong build joins what its reference geometry says', () => {
  const raw = fitted(osier(), { regeneration: 'raw-pass' });
  const shut = fitted(osier(), { regeneration: 'shut-outlet' });
  expect(text(raw.joins('service', { sleeve: 0.009 }))).toBe('BOT+IN+OUT DR+TOP');
  expect(text(raw.joins('backwash', { sleeve: 0.009 }))).toBe('BOT+DR IN+OUT');
  expect(text(shut.joins('service', { sleeve: 0 }))).toBe('BOT+DR+TOP IN+OUTSIDE');
  expect(text(shut.joins('refill', { sleeve: 0 }))).toBe('BOT+DR IN+TOP');
});

test('a raw-pass piston in a valve whose sleeve stayed on the rod stands a sleeve too far in', () => {
  const raw = fitted(osier(), { regeneration: 'raw-pass' });
  const shut = fitted(osier(), { regeneration: 'shut-outlet' });
  expect(text(shut.joins('service', { piston: raw.variant }))).toBe('BOT+IN+OUT DR+TOP');
});

test('pieces of the stack are counted, other parts as the definition says', () => {
  expect(stackCounts(small)).toEqual({ seal: 7, spacer: 6, ring: 0, plug: 0 });
  expect(small.parts.map((part) => [part.id, partCount(part, small)])).toEqual([
    ['piston', 1],
    ['seal-slim', 7],
    ['seal-broad', 7],
    ['kit-slim', 1],
  ]);
});
