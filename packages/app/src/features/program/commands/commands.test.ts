import { describe, expect, it } from 'vitest';
import { english, madeOfDemo } from '../../../engine/testing/made-of-visit.ts';
import { testStream } from '../../../engine/testing/written-entries.ts';
import { programView } from '../../../engine/views/program-view.ts';
import { decideDose } from './decide-dose.ts';
import { isWrong, setAsAdvised, settingsWritten } from './settings.ts';

const about = { stream: testStream, visit: 'laundry-slow', conditioner: 's1' };
const view = programView(madeOfDemo('laundry-slow'));

describe('settings keyed in as advised', () => {
  it('are what the fold holds as set, and differ in nothing from the advice', () => {
    const made = madeOfDemo('laundry-slow', english, setAsAdvised(about, view.rows));
    const after = programView(made);
    expect(after.isSet).toBe(true);
    expect(after.rows.filter(({ otherwise }) => otherwise !== undefined)).toEqual([]);
    expect(made.folded.visit.settings?.set?.refill?.as).toBe('32 min');
    expect(made.site.setAside).toEqual([]);
  });

  it('are nothing where nothing is advised', () => {
    expect(setAsAdvised(about, [])).toEqual([]);
  });
});

describe('settings written down', () => {
  const typed = {
    backwash: { figure: '12', unit: 'min' },
    refill: { figure: ' ', unit: 'min' },
    days: { figure: '6', unit: '' },
    at: { figure: '2', unit: '' },
  };

  it('hold what was typed; an empty field says nothing', () => {
    expect(settingsWritten(about, 'setting-found', view.fields, typed)).toEqual([
      {
        stream: testStream,
        kind: 'setting-found/1',
        payload: { backwash: '12 min', days: 6, at: '02:00' },
        about: { visit: 'laundry-slow' },
      },
    ]);
  });

  it('stand where nothing else was said of them before', () => {
    const drafts = settingsWritten(about, 'setting-found', view.fields, typed);
    const { settings } = madeOfDemo('laundry-slow', english, drafts).visit;
    expect(settings?.found?.backwash?.as).toBe('12 min');
    expect(settings?.found?.refill?.as).toBe('16 min');
  });

  it('say which field cannot be read', () => {
    const fields = new Map(view.fields.map((field) => [field.name, field]));
    const wrong = (name: 'backwash' | 'at' | 'days', figure: string): boolean => {
      const field = fields.get(name);
      return field !== undefined && isWrong(field, { figure, unit: field.units[0] ?? '' });
    };
    expect([wrong('backwash', 'ten'), wrong('at', '25:00'), wrong('days', '0')]).toEqual([true, true, true]);
    expect([wrong('backwash', '10,5'), wrong('at', '2:30'), wrong('days', '')]).toEqual([
      false,
      false,
      false,
    ]);
  });
});

describe('a dose that was decided', () => {
  it('is the one that the program is made for', () => {
    const after = programView(madeOfDemo('laundry-slow', english, decideDose(about, '10 lb/ft3')));
    expect(after.isDoseDecided).toBe(true);
    expect(after.doses.filter(({ isChosen }) => isChosen).map(({ value }) => value)).toEqual(['10 lb/ft3']);
    expect(after.dose?.text).toBe('10\u00a0lb/ft³');
  });
});
