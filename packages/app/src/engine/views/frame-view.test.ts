import { describe, expect, test } from 'vitest';
import { aboutVisit } from '../../offline/draft-about.ts';
import { bareVisit, english, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { testStream } from '../testing/written-entries.ts';
import { firstMinuteView } from './first-minute-view.ts';
import { frameView } from './frame-view.ts';

const about = { stream: testStream, visit: bareVisit.id, conditioner: 'u1' };

describe('what stands around a visit', () => {
  test('the title block says valve, bed, water and visit in the units of the reader', () => {
    const us = frameView(madeOfDemo('laundry-slow')).cells.map(({ value }) => value);
    const metric = frameView(madeOfDemo('laundry-slow', spanish)).cells.map(({ value }) => value);
    expect(us.join(' ')).toMatch(/ft³.*gpg/u);
    expect(metric.join(' ')).toMatch(/\sL.*mg\/L\sCaCO₃/u);
  });

  test('of a unit nobody knows only what is known is said', () => {
    const frame = frameView(madeOf(bareVisit));
    expect(frame.cells.map(({ label }) => label)).toEqual(['Valve', 'Visit']);
    expect(frame.stages.every(({ state }) => state !== 'begun')).toBe(true);
  });

  test('a stage counts as begun once something was entered for it, and the visit goes on there', () => {
    const found = aboutVisit(about, 'setting-found', { backwash: '10 min' });
    const frame = frameView(madeOf(bareVisit, english, [found]));
    expect(frame.stages.find(({ id }) => id === 'program')).toEqual({ id: 'program', state: 'begun' });
    expect(frame.goOn).toBe('program');
  });

  test('a visit handed over is done', () => {
    const over = aboutVisit(about, 'handed-over', {});
    const frame = frameView(madeOf(bareVisit, english, [over]));
    expect(frame.isHandedOver).toBe(true);
    expect(frame.stages.at(-1)).toEqual({ id: 'hand-over', state: 'done' });
  });
});

describe('the first minute', () => {
  test('it asks for the settings that the controller of the unit holds', () => {
    const view = firstMinuteView(madeOf(bareVisit));
    expect(view.settings.map(({ id }) => id)).toEqual([
      'backwash',
      'brine',
      'fast-rinse',
      'refill',
      'volume',
      'days',
      'at',
    ]);
    const filter = {
      ...bareVisit,
      conditioners: [{ id: 'u1', family: 'undescribed', kind: 'filter' as const }],
    };
    expect(firstMinuteView(madeOf(filter)).settings.map(({ id }) => id)).toEqual([
      'backwash',
      'fast-rinse',
      'days',
      'at',
    ]);
  });

  test('photos are counted by what they show, in whatever language they were taken', () => {
    const photo = aboutVisit(about, 'photo-taken', {
      file: 'a'.repeat(64),
      of: { en: 'Label of the unit', es: 'Etiqueta del equipo' },
    });
    const { shots } = firstMinuteView(madeOf(bareVisit, spanish, [photo]));
    expect(shots.find(({ id }) => id === 'label')).toMatchObject({ title: 'Etiqueta del equipo', taken: 1 });
    expect(shots.filter(({ taken }) => taken > 0)).toHaveLength(1);
  });
});
