import { describe, expect, test } from 'vitest';
import type { Place } from '../../offline/draft-about.ts';
import { operationDone } from '../../steps/commands/done.ts';
import { bareVisit, demoVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { testStream } from '../testing/written-entries.ts';
import { leaveSafeView } from './leave-safe-view.ts';

const { id, subject } = demoVisit('hotel');
const hotel: Place = { stream: testStream, visit: id, conditioner: subject };

describe('leaving the unit safe', () => {
  test('before anything was opened it is in service with nothing to do', () => {
    const view = leaveSafeView(madeOfDemo('hotel'));
    expect(view).toMatchObject({
      state: 'done',
      into: 'service',
      steps: [],
      title: 'The unit is in service.',
    });
    expect(view.says[0]).toBe('Nothing was opened; the unit stands in service as it was found.');
  });

  test('from the middle of the work it puts back what is off, in reverse', () => {
    const done = ['isolate-unit', 'let-cool', 'vent-pressure', 'power-off', 'cover-off'];
    const more = done.flatMap((operation) => operationDone(hotel, { operation }, '2026-11-25T10:00:00Z'));
    const view = leaveSafeView(madeOfDemo('hotel', english, more));
    expect(view.into).toBe('service');
    expect(view.steps[0]?.order).toBe('Put the cover on');
    expect(view.steps.map((step) => step.id)).toContain('open-water');
    expect(view.title).toBe('Not safe yet: the steps below come first');
  });

  test('with a piece missing it closes the valve and leads the water round', () => {
    const all = [
      'isolate-unit',
      'let-cool',
      'vent-pressure',
      'power-off',
      'cover-off',
      'back-plate-off',
      'piston-out',
    ];
    const more = [
      ...all.flatMap((operation) => operationDone(hotel, { operation }, '2026-11-25T10:00:00Z')),
      ...operationDone(hotel, { operation: 'stack-out' }, '2026-11-25T10:20:00Z', {
        seal: 6,
        spacer: 6,
        plug: 1,
        ring: 1,
      }),
    ];
    expect(leaveSafeView(madeOfDemo('hotel', english, more)).into).toBe('bypass');
  });

  test('the card is one whole file in the language of the reader', () => {
    const { card } = leaveSafeView(madeOfDemo('hotel', spanish));
    expect(card.html).toMatch(/^<!doctype html>/u);
    expect(card.html).toContain('<html lang="es">');
    expect(card.name).toMatch(/\.html$/u);
  });

  test('a unit nobody knows may be left as it is', () => {
    expect(leaveSafeView(madeOf(bareVisit)).card.html).toContain('<!doctype html>');
  });
});
