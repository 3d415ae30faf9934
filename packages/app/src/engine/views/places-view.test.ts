import { draftsOfVisit, fold } from '@brinewright/journal';
import { describe, expect, test } from 'vitest';
import { speechFor } from '../speech.ts';
import { bareVisit, demoVisit, english, now, spanish } from '../testing/made-of-visit.ts';
import { testStream, writtenEntries } from '../testing/written-entries.ts';
import { placesView } from './places-view.ts';
import { isCode, shortCode } from './short-code.ts';

const siteOf = (name: string) => ({
  stream: testStream,
  folded: fold(writtenEntries(draftsOfVisit(demoVisit(name), { stream: testStream }))),
});
const laundry = siteOf('laundry-slow');
const see = (query: string, reader = english, at = now) =>
  placesView([laundry], 4, query, speechFor(reader), at);

describe('the start place', () => {
  test('an open visit is shown whatever its day, with its complaint', () => {
    const { visits } = see('', english, '2027-01-03T10:00:00Z');
    expect(visits).toMatchObject([{ isOpen: true, when: 'Open since 25 Nov 2026' }]);
    expect(visits[0]?.complaint?.length).toBeGreaterThan(0);
  });

  test('the day is told as people say it', () => {
    expect(see('').day).toBe('Wednesday 25 November');
    expect(see('', spanish).day).toBe('Miércoles 25 de noviembre');
  });

  test('a unit is found by part of its name, without accents, and by the code on its label', () => {
    const [unit] = see('').units;
    if (unit === undefined) throw new Error('the laundry has a unit');
    expect(see('wÁsh gannet').units).toEqual([unit]);
    expect(see(unit.code.toLowerCase().replace('-', ' ')).units).toEqual([unit]);
    expect(see('nowhere').units).toEqual([]);
  });

  test('a unit without a name is called what it is', () => {
    const folded = fold(writtenEntries(draftsOfVisit(bareVisit, { stream: testStream })));
    const view = placesView([{ stream: testStream, folded }], 4, '', speechFor(spanish), now);
    expect(view.visits.map(({ unit }) => unit)).toEqual(['Suavizador']);
  });
});

describe('the code on a label', () => {
  test('it is the same on every device and has no letter that is taken for a figure', () => {
    expect(shortCode(testStream, 'u1')).toBe(shortCode(testStream, 'u1'));
    expect(shortCode(testStream, 'u1')).not.toBe(shortCode(testStream, 'u2'));
    expect(shortCode(testStream, 'u1')).toMatch(/^[^BILOS]{3}-[^BILOS]{3}$/u);
    expect(isCode('abc-123', 'ABC-123')).toBe(true);
    expect(isCode('abc-124', 'ABC-123')).toBe(false);
  });
});
