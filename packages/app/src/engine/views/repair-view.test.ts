import { describe, expect, test } from 'vitest';
import {
  decided,
  inHandChanged,
  partUsed,
  stockListed,
} from '../../features/repair/commands/repair-commands.ts';
import type { Place } from '../../offline/draft-about.ts';
import { bareVisit, demoVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { testStream } from '../testing/written-entries.ts';
import { repairView } from './repair-view.ts';

const placeOf = (name: string): Place => {
  const { id, subject } = demoVisit(name);
  return { stream: testStream, visit: id, conditioner: subject };
};

describe('the repair view', () => {
  test('lists each part with number, count, why and where it is', () => {
    const { parts, total } = repairView(madeOfDemo('hotel'));
    expect(parts.map(({ id, number, count, why, where }) => ({ id, number, count, why, where }))).toEqual([
      { id: 'reseal-broad-epdm', number: 'W9.121', count: 1, why: 'Seals, spacers', where: 'in-hand' },
      { id: 'drain-d6', number: 'W4.016', count: 1, why: 'Drain control', where: 'not-written' },
    ]);
    expect(total).toBe('93\u00a0USD');
  });

  test('refuses the look-alike in the hand with its reason', () => {
    const { wrong, parts } = repairView(madeOfDemo('look-alike'));
    expect(wrong.map(({ id }) => id)).toContain('reseal-broad-nitrile');
    expect(wrong.find(({ id }) => id === 'reseal-broad-nitrile')?.says).toContain('slim');
    expect(parts.map(({ id }) => id)).toEqual(['reseal-slim-nitrile']);
  });

  test('what was listed in the van, taken in hand and used is shown by part', () => {
    const place = placeOf('hotel');
    const listed = stockListed(place, [{ part: 'drain-d6', count: 0 }, { part: 'seal-broad-epdm' }]);
    const missing = repairView(madeOfDemo('hotel', english, listed));
    expect(missing.parts[1]).toMatchObject({ where: 'missing', order: 1 });
    expect(missing.stock.map(({ part, count }) => `${part} ${count}`)).toEqual([
      'reseal-broad-epdm undefined',
      'drain-d6 0',
    ]);
    const more = [...inHandChanged(place, missing.kit, 'drain-d6'), ...partUsed(place, 'drain-d6', 1)];
    const taken = repairView(madeOfDemo('hotel', english, [...listed, ...more]));
    expect(taken.parts[1]).toMatchObject({ where: 'in-hand', used: 1 });
  });

  test('a decided fault stands chosen, and its mend replaces the parts of the likeliest', () => {
    const place = placeOf('hotel');
    const before = repairView(madeOfDemo('hotel'));
    const other = before.faults.find(({ chosen }, index) => !chosen && index > 0);
    if (other === undefined) throw new Error('no second fault');
    const after = repairView(madeOfDemo('hotel', english, decided(place, 'fault', other.value)));
    expect(after.faults.filter(({ chosen }) => chosen).map(({ value }) => value)).toEqual([other.value]);
    expect(after.advice).not.toEqual(before.advice);
  });

  test('a conversion asks what is looked at first and brings its kit', () => {
    const place = placeOf('look-alike');
    const view = repairView(madeOfDemo('look-alike'));
    const toShut = view.conversions.find(({ value }) => value === 'regeneration:shut-outlet');
    expect(toShut?.asks[0]).toContain('run dry');
    const after = repairView(
      madeOfDemo('look-alike', english, decided(place, 'convert', 'regeneration:shut-outlet')),
    );
    expect(after.parts.some(({ id }) => id === 'to-shut-slim' || id === 'piston-shut-slim')).toBe(true);
    expect(after.advice.some((words) => words.startsWith('Before converting'))).toBe(true);
  });

  test('where settings are the mend it says so and lists no part', () => {
    const view = repairView(madeOfDemo('laundry-fast'));
    expect(view.setsProgram).toBe(true);
    expect(view.parts).toEqual([]);
    expect(view.total).toBeUndefined();
  });

  test('speaks Spanish', () => {
    expect(repairView(madeOfDemo('hotel', spanish)).parts[0]?.name).toBe('Juego de sellos, ancho, EPDM');
  });

  test('of a unit nobody knows it says what is missing', () => {
    const view = repairView(madeOf(bareVisit));
    expect(view.parts).toEqual([]);
    expect(view.gaps.length).toBeGreaterThan(0);
    expect(view.covers.isDescribed).toBe(false);
  });
});
