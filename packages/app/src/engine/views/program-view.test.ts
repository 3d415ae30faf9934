import { describe, expect, it } from 'vitest';
import { bareVisit, demoVisit, madeOf, madeOfDemo, spanish } from '../testing/made-of-visit.ts';
import { type ProgramView, programView } from './program-view.ts';

const rowOf = ({ rows }: ProgramView, name: string) => rows.find((row) => row.name === name);

describe('the program of the slow laundry', () => {
  const view = programView(madeOfDemo('laundry-slow'));

  it('sets every time against what was found, in the steps of the controller', () => {
    const refill = rowOf(view, 'refill');
    expect([refill?.found?.text, refill?.set?.text, refill?.advised]).toEqual([
      '16\u00a0min',
      '32\u00a0min',
      '32 min',
    ]);
    expect(refill?.isChanged).toBe(true);
    expect(rowOf(view, 'backwash')?.isChanged).toBe(false);
  });

  it('shows both neighbours of the exact time, and which of them is set', () => {
    const neighbours = rowOf(view, 'refill')?.neighbours ?? [];
    expect(neighbours.map(({ time, isSet }) => [time, isSet])).toEqual([
      ['31\u00a0min', false],
      ['32\u00a0min', true],
    ]);
    expect(neighbours.every(({ does }) => does.includes('of salt'))).toBe(true);
  });

  it('opens a figure to its formula, inputs and source', () => {
    const way = rowOf(view, 'refill')?.exact?.derivation;
    expect(way?.formula).not.toBe('');
    expect(way?.inputs.length).toBeGreaterThan(1);
    expect(way?.source).toBeDefined();
  });

  it('offers the usual doses, one of them chosen', () => {
    expect(view.doses.map(({ value }) => value)).toEqual(['6 lb/ft3', '8 lb/ft3', '10 lb/ft3', '15 lb/ft3']);
    expect(view.doses.filter(({ isChosen }) => isChosen).map(({ value }) => value)).toEqual(['8 lb/ft3']);
  });

  it('draws the regeneration and the window at both widths, each with its words', () => {
    for (const picture of [view.timeline, view.window?.drawing])
      for (const drawing of [picture?.wide, picture?.narrow]) {
        expect(drawing?.svg).toMatch(/^<svg xmlns/u);
        expect(drawing?.twin.length).toBeGreaterThan(1);
      }
  });

  it('explains each figure that the shown ones rest on once', () => {
    const titles = view.figures.map(({ title, text }) => `${title} ${text}`);
    expect(titles.length).toBeGreaterThan(20);
  });
});

describe('what was really set', () => {
  it('is shown where it is not what was advised', () => {
    const visit = demoVisit('laundry-slow');
    const { found } = visit.settings ?? {};
    if (found === undefined) throw new Error('found');
    const view = programView(madeOf({ ...visit, settings: { found, set: { ...found, at: '03:00' } } }));
    expect(view.isSet).toBe(true);
    expect(rowOf(view, 'refill')?.otherwise).toBe('16\u00a0min');
    expect(rowOf(view, 'backwash')?.otherwise).toBeUndefined();
    expect(rowOf(view, 'at')?.otherwise).toBe('03:00');
  });
});

describe('a unit of which nothing is known', () => {
  const view = programView(madeOf(bareVisit));

  it('gets no program, but what would open it and a form for what stands in the controller', () => {
    expect(view.rows.filter(({ set }) => set !== undefined && set.text === '')).toEqual([]);
    expect(view.gaps.length).toBeGreaterThan(0);
    expect(view.fields.map(({ name }) => name)).toEqual([
      'backwash',
      'brine',
      'fast-rinse',
      'refill',
      'volume',
      'days',
      'at',
    ]);
  });
});

describe('in Spanish and metric', () => {
  it('keeps what was entered and shows the rest in the units of the reader', () => {
    const view = programView(madeOfDemo('undescribed', spanish));
    expect(rowOf(view, 'backwash')?.label).toBe('Retrolavado');
    expect(view.dose?.text).toBe('128\u00a0g/L');
    expect(view.fields.find(({ name }) => name === 'volume')?.found).toEqual({ figure: '3000', unit: 'gal' });
  });
});

describe('a backwash window in which nothing lies', () => {
  it('says why, and what can be done instead', () => {
    const visit = demoVisit('laundry-slow');
    const drain = { value: { kind: 'flow', si: 1e-4 }, how: 'told' } as const;
    const { window } = programView(madeOf({ ...visit, supply: { ...visit.supply, drain } }));
    expect(window?.state).toBe('empty');
    expect(window?.why).toBe('The drain cannot carry what this bed needs.');
    expect(window?.choices.length).toBeGreaterThan(1);
    expect(window?.fits).toBeUndefined();
  });
});

describe('every demo visit', () => {
  it.each(['hotel', 'iron-well', 'laundry-fast', 'laundry-slow', 'look-alike', 'undescribed'])(
    'has a program of plain JSON without a hole: %s',
    (name) => {
      const view = programView(madeOfDemo(name, spanish));
      expect(JSON.parse(JSON.stringify(view))).toEqual(JSON.parse(JSON.stringify(structuredClone(view))));
      expect(JSON.stringify(view)).not.toMatch(/‹|NaN|undefined/u);
      expect(view.rows.length).toBeGreaterThan(1);
    },
  );
});
